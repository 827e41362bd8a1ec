package dev.sunthread.production;

import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** Material that went into each of the step's units. */
record StepUse(
        @Field("The item") String item,

        @Field("The lot, if its label was scanned") @Nullable
        String lot,

        @Field("The container it came from, if its label was scanned") @Nullable
        String container,

        @Field("The position of the station it came from, if known") @Nullable
        String position,

        @Field(value = "How much went into each unit", positive = true) @Nullable
        BigDecimal quantity,

        @Field("The unit of the quantity") @Nullable String unitOfMeasure) {

    StepUse {
        if ((quantity == null) != (unitOfMeasure == null)) {
            throw new Contradiction(
                    quantity == null ? "quantity" : "unitOfMeasure",
                    "is missing beside the other",
                    "Give quantity and unit together, or neither");
        }
    }
}
