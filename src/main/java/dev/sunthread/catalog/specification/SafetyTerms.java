package dev.sunthread.catalog.specification;

import dev.sunthread.catalog.recipe.Bounds;
import dev.sunthread.ledger.body.Contradiction;
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
        BigDecimal seconds,

        @Field("How the demanded insulation resistance shrinks with the area; absent if it does not") @Nullable
        AreaRule area) {

    public SafetyTerms {
        if (area != null && (quantity != Quantity.INSULATION_RESISTANCE || bounds.least() == null)) {
            throw new Contradiction(
                    "area",
                    "goes with the least insulation resistance only",
                    "Leave it out, or give the least insulation resistance of small areas");
        }
    }

    /** Above some area not the resistance must reach a value, but resistance times area. */
    public record AreaRule(
            @Field(value = "The area of what is tested, in m2", positive = true)
            BigDecimal squareMetres,

            @Field("Up to what area, in m2, the stated bounds hold")
            BigDecimal upTo,

            @Field(value = "What resistance times area must reach above it, in Mohm m2", positive = true)
            BigDecimal timesArea) {}

    /** What can be limited. */
    public enum Quantity {
        INSULATION_RESISTANCE,
        LEAKAGE,
        GROUND_RESISTANCE
    }
}
