package dev.sunthread.materials;

import dev.sunthread.catalog.Item;
import dev.sunthread.catalog.Items;
import dev.sunthread.catalog.Tracking;
import dev.sunthread.ledger.body.Unreadable;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Items that come in lots, as the fields {@code item} and {@code unitOfMeasure} of a body name them. */
@Component
public class LotItems {

    private final Items items;

    LotItems(Items items) {
        this.items = items;
    }

    /**
     * The item of a lot.
     *
     * @param unitOfMeasure the unit that a quantity of it is stated in, if one is
     * @throws Unreadable if it is not released, is tracked by serial, or has another unit
     */
    public Item named(String number, @Nullable String unitOfMeasure) {
        Item item = items.named(number, "body.item");
        itemIsTrackedByLot(item);
        if (unitOfMeasure != null) {
            quantityIsInTheItemsUnit(item, unitOfMeasure);
        }
        return item;
    }

    private static void itemIsTrackedByLot(Item item) {
        if (item.tracking() == Tracking.SERIAL) {
            throw Unreadable.at(
                    "body.item",
                    "names item \"" + item.number() + "\", which is tracked by serial",
                    "Record a birth for each serial instead");
        }
    }

    private static void quantityIsInTheItemsUnit(Item item, String unitOfMeasure) {
        if (!item.unitOfMeasure().equals(unitOfMeasure)) {
            throw Unreadable.at(
                    "body.unitOfMeasure",
                    "is \"" + unitOfMeasure + "\" where the item has \"" + item.unitOfMeasure() + "\"",
                    "Give the quantity in the item's unit");
        }
    }
}
