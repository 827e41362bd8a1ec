package dev.sunthread.simulator.world;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** How lots and containers come to be and end. */
public sealed interface Supply extends Happening {

    /** A lot is received from a supplier. */
    record Receipt(long at, String lot, String item, List<String> supplierLots) implements Supply {
        @Override
        public void happenIn(World world) {
            world.matter(Thing.lot(lot));
        }
    }

    /** Containers get content of a lot, on top of what they hold. */
    record Filling(long at, String lot, List<String> labels) implements Supply {
        @Override
        public void happenIn(World world) {
            labels.forEach(label -> world.matter(Thing.container(label)).take(world.matter(Thing.lot(lot))));
        }
    }

    /** A lot, or what is in one container, is divided. */
    record Split(long at, Source from, List<String> into) implements Supply {
        @Override
        public void happenIn(World world) {
            into.forEach(lot -> world.matter(Thing.lot(lot)).take(world.matter(from.vessel())));
        }
    }

    /** Lots go on as one. */
    record Merge(long at, List<String> lots, String into) implements Supply {
        @Override
        public void happenIn(World world) {
            lots.forEach(lot -> world.matter(Thing.lot(into)).take(world.matter(Thing.lot(lot))));
        }
    }

    /** A lot is mixed of others, or topped up with them. */
    record Blend(long at, String lot, String item, boolean topUp, List<Source> components) implements Supply {
        @Override
        public void happenIn(World world) {
            components.forEach(part -> world.matter(Thing.lot(lot)).take(world.matter(part.vessel())));
        }
    }

    /** A lot goes on under another number, or as another item if one is given. */
    record Relabel(
            long at, String lot, String into, @Nullable String item) implements Supply {
        @Override
        public void happenIn(World world) {
            world.matter(Thing.lot(into)).take(world.matter(Thing.lot(lot)));
        }
    }

    /** Nothing of a lot is left in stock. */
    record Ending(long at, String lot) implements Supply {
        @Override
        public void happenIn(World world) {}
    }

    /** Matter is taken out of a unit into a lot. */
    record Recovery(
            long at, String unit, String lot, @Nullable String item) implements Supply {
        @Override
        public void happenIn(World world) {
            world.matter(Thing.lot(lot)).take(world.body(unit).content());
        }
    }
}
