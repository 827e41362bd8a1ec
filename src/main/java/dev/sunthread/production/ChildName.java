package dev.sunthread.production;

import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** What is put into a parent or taken out of it: a unit, or a part known by its lot. */
record ChildName(
        @Field("The unit, if it has a serial") @Nullable UnitName unit,

        @Field("The lot of the part, if it has none") @Nullable
        String lot,

        @Field(value = "How many parts of the lot", positive = true) @Nullable
        BigDecimal quantity,

        @Field("The unit of the quantity") @Nullable String unitOfMeasure) {

    ChildName {
        if ((unit == null) == (lot == null)) {
            throw new Contradiction("unit", "must be given, or lot, and not both", "Name a unit or a lot");
        }
        if ((quantity == null) != (unitOfMeasure == null) || (unit != null && quantity != null)) {
            throw new Contradiction(
                    "quantity", "does not fit", "Give quantity and unit together, and only for a part of a lot");
        }
    }
}
