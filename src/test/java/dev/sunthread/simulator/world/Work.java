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

    /** What is done to some units of a row before what is loaded changes; the step of the row tells it with the rest. */
    record Begun(
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
            Step.act(world, id, units, alone, uses);
        }
    }

    /** What the last units of a row got, and which they are. */
    record Rest(List<String> units, List<Use> uses) {}

    /**
     * An operation, from its start to {@code at}.
     *
     * @param uses what it took in; of a row whose material changed in its midst what was scanned
     * @param rest the units of such a row that came after the change; the others are done
     */
    record Step(
            long at,
            long start,
            String id,
            String operation,
            String station,
            List<String> units,
            boolean alone,
            List<Use> uses,
            @Nullable Rest rest)
            implements Work {

        public Step(
                long at,
                long start,
                String id,
                String operation,
                String station,
                List<String> units,
                boolean alone,
                List<Use> uses) {
            this(at, start, id, operation, station, units, alone, uses, null);
        }

        @Override
        public void happenIn(World world) {
            if (rest == null) {
                act(world, id, units, alone, uses);
            } else {
                act(world, id, rest.units(), alone, rest.uses());
            }
        }

        private static void act(World world, String id, List<String> units, boolean alone, List<Use> uses) {
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
