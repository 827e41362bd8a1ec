package dev.sunthread.simulator.world;

import org.jspecify.annotations.Nullable;

/** How units come to be, go into each other and leave. */
public sealed interface Assembly extends Happening {

    /** A new unit and the serial it gets. */
    record Birth(
            long at, String unit, String serial, @Nullable String station) implements Assembly {
        @Override
        public void happenIn(World world) {
            world.bear(unit, serial);
        }
    }

    /** A unit, or a part of a lot, goes into a position. */
    record Installation(
            long at,
            Child child,
            String parent,
            String position,
            @Nullable String station) implements Assembly {
        @Override
        public void happenIn(World world) {
            Body into = world.body(parent);
            if (child.unit() != null) {
                into.put(position, world.body(child.unit()));
            } else {
                Thing lot = Thing.lot(child.name());
                into.put(position, new Body.Part(child.name(), world.matter(lot).copy()));
            }
        }
    }

    /** What is in a position is taken out. */
    record Removal(
            long at,
            Child child,
            String parent,
            String position,
            @Nullable String station) implements Assembly {
        @Override
        public void happenIn(World world) {
            world.body(parent).takeOut(position);
        }
    }

    /** A unit is thrown away. */
    record Scrap(long at, String unit) implements Assembly {
        @Override
        public void happenIn(World world) {}
    }

    /** A unit leaves the plant with all inside. */
    record Shipment(long at, String number, String unit) implements Assembly {
        @Override
        public void happenIn(World world) {}
    }

    /** A unit comes back with all inside. */
    record Return(long at, String unit) implements Assembly {
        @Override
        public void happenIn(World world) {}
    }

    /** A unit or a part of a lot. */
    record Child(@Nullable String unit, @Nullable String lot) {

        public String name() {
            return java.util.Objects.requireNonNullElse(unit, String.valueOf(lot));
        }
    }
}
