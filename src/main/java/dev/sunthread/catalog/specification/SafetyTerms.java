package dev.sunthread.catalog.specification;

import dev.sunthread.catalog.recipe.Bounds;
import dev.sunthread.ledger.body.Field;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** What a test of insulation or ground path must show. Limits come from the standard and the law that apply, never from here. */
public record SafetyTerms(
        @Field("The quantity: Mohm, microamperes, or ohms to ground")
        Quantity quantity,

        @Field("What is good") Bounds bounds,

        @Field("From what voltage in volts, or current through the ground path in amperes, on it counts")
        BigDecimal applied,

        @Field("For how many seconds that must be held; absent for any time") @Nullable
        BigDecimal seconds) {

    /** What can be limited. */
    public enum Quantity {
        INSULATION_RESISTANCE,
        LEAKAGE,
        GROUND_RESISTANCE
    }
}
