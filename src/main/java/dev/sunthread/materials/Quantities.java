package dev.sunthread.materials;

import dev.sunthread.ledger.body.Contradiction;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** What bodies that state a quantity have in common. */
public final class Quantities {

    private Quantities() {}

    /** @throws Contradiction if a quantity is given without its unit, or a unit without its quantity */
    public static void standTogether(@Nullable BigDecimal quantity, @Nullable String unitOfMeasure) {
        if ((quantity == null) != (unitOfMeasure == null)) {
            throw new Contradiction(
                    quantity == null ? "quantity" : "unitOfMeasure",
                    "is missing beside the other",
                    "Give quantity and unit together, or neither");
        }
    }
}
