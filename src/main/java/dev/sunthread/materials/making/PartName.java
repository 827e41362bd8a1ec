package dev.sunthread.materials.making;

import dev.sunthread.ledger.body.Field;
import dev.sunthread.materials.Quantities;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** A part of a lot as a body names it. */
record PartName(
        @Field("The lot that went in") String lot,

        @Field("The container it came from, if its label was scanned") @Nullable
        String container,

        @Field(value = "How much went in", positive = true) @Nullable
        BigDecimal quantity,

        @Field("The unit of the quantity, as the lot's item has it") @Nullable
        String unitOfMeasure) {

    PartName {
        Quantities.standTogether(quantity, unitOfMeasure);
    }

    /** All that there is of a lot. */
    static PartName wholeOf(String lot) {
        return new PartName(lot, null, null, null);
    }
}
