package dev.sunthread.simulator.world;

import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What happens at a position of a station. */
public sealed interface Loading extends Happening {

    Place place();

    /** Material is loaded. */
    record Charge(long at, Place place, Source source) implements Loading {
        @Override
        public void happenIn(World world) {
            world.spot(place).load(source);
        }
    }

    /**
     * What is loaded is taken off.
     *
     * @param into the lot as which it goes on, where the position mixes
     * @param carried what earlier loads left behind and went along into that lot
     */
    record Discharge(
            long at, Place place, Source source, @Nullable String into, Set<Source> carried) implements Loading {
        @Override
        public void happenIn(World world) {
            Spot spot = world.spot(place);
            Matter content = world.matter(source.vessel());
            if (into != null) {
                Matter mixed = world.matter(Thing.lot(into));
                mixed.take(content);
                carried.forEach(left -> mixed.take(Objects.requireNonNull(spot.leftBehind.get(left))));
            }
            spot.unload(content);
        }
    }

    /** The position is purged; nothing is left behind. */
    record Purge(long at, Place place) implements Loading {
        @Override
        public void happenIn(World world) {
            world.spot(place).leftBehind.clear();
        }
    }
}
