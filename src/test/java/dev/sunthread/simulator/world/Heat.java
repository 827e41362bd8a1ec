package dev.sunthread.simulator.world;

import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Trays, racks and ovens. */
public sealed interface Heat extends Happening {

    /** A unit or carrier is put on a carrier. */
    record Load(
            long at,
            String carrier,
            String carried,
            boolean unit,
            @Nullable String station) implements Heat {
        @Override
        public void happenIn(World world) {
            world.carriers.load(carried, carrier);
        }
    }

    /** A unit or carrier is taken off a carrier. */
    record Unload(
            long at,
            String carrier,
            String carried,
            boolean unit,
            @Nullable String station) implements Heat {
        @Override
        public void happenIn(World world) {
            world.carriers.unload(carried);
        }
    }

    /** Everything is taken off a carrier. */
    record Emptying(long at, String carrier, @Nullable String station) implements Heat {
        @Override
        public void happenIn(World world) {
            world.carriers.on(carrier).forEach(world.carriers::unload);
        }
    }

    /** A run begins on what is in the oven. */
    record Begin(long at, String run, Set<String> units, Set<String> carriers) implements Heat {
        @Override
        public void happenIn(World world) {
            world.begin(new Thing(Thing.Kind.CURE_RUN, run), new World.Load(units, carriers));
        }
    }

    /** The run ends; its record is written then. */
    record End(long at, Begin begin, String recipe, String equipment) implements Heat {
        @Override
        public void happenIn(World world) {
            world.end(new Thing(Thing.Kind.CURE_RUN, begin.run()));
        }
    }
}
