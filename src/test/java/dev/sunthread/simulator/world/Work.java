package dev.sunthread.simulator.world;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What is done to units. */
public sealed interface Work extends Happening {

    long start();

    /**
     * Material that goes into units.
     *
     * @param place where it comes from, absent if by hand
     * @param carried what earlier loads left behind there and went along
     */
    record Use(String item, Source source, @Nullable Place place, Set<Source> carried) {}

    /** An operation, from its start to {@code at}. */
    record Step(
            long at,
            long start,
            String id,
            String operation,
            String station,
            List<String> units,
            boolean alone,
            List<Use> uses)
            implements Work {

        @Override
        public void happenIn(World world) {
            Matter given = world.register.matter(new Thing(Thing.Kind.STEP, id));
            uses.forEach(use -> draw(world, use, given));
            units.forEach(unit -> world.act(unit, alone, given));
        }

        private static void draw(World world, Use use, Matter given) {
            given.take(world.matter(use.source().vessel()));
            if (use.place() != null) {
                Spot spot = world.spot(use.place());
                spot.used();
                use.carried().forEach(left -> given.take(Objects.requireNonNull(spot.leftBehind.get(left))));
            }
        }
    }

    /** A test of one unit on a rig, from its start to {@code at}. */
    record Test(long at, long start, String run, String unit, String specification, String equipment) implements Work {
        @Override
        public void happenIn(World world) {
            world.act(unit, false, world.register.matter(new Thing(Thing.Kind.TEST_RUN, run)));
        }
    }
}
