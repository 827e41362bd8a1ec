package dev.sunthread.catalog.specification;

import dev.sunthread.catalog.recipe.Bounds;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What one sweep under light must show, and by which method it is read. */
public record CurveTerms(
        @Field("The sweep, by its name") String sweep,

        @Field("The order of the polynomial of power, 0 for the largest measured point; absent for least squares"
                + " over the points around the maximum")
        @Nullable
        Integer powerOrder,

        @Field("How many points around the largest one the polynomial is fitted to") @Nullable
        Integer powerPoints,

        @Field("How many points give the slope at short circuit; absent for 5") @Nullable
        Integer shuntPoints,

        @Field("How many points give the slope at open circuit; absent for 4") @Nullable
        Integer seriesPoints,

        @Field("To what it is translated before it is judged; absent if it is judged as measured") @Nullable
        TranslationTerms translation,

        @Field(value = "Each quantity with what is good", atLeast = 1)
        List<QuantityBounds> limits) {

    public CurveTerms {
        if ((powerOrder == null) != (powerPoints == null)) {
            throw new Contradiction("powerPoints", "goes with powerOrder only", "Give both or neither");
        }
        boolean fits = powerOrder == null
                || powerPoints == null
                || powerOrder >= 0 && powerOrder != 1 && powerPoints >= powerOrder + 1;
        if (!fits) {
            throw new Contradiction(
                    "powerPoints",
                    "do not determine the maximum of a polynomial of that order",
                    "Give order 0 or at least 2, and more points than the order");
        }
        if (shuntPoints != null && shuntPoints < 2 || seriesPoints != null && seriesPoints < 2) {
            throw new Contradiction("shuntPoints", "or seriesPoints are too few for a line", "Give at least 2");
        }
    }

    /** A quantity of the curve with what is good. */
    public record QuantityBounds(
            @Field("The quantity: amperes, volts, watts, a part of 1, ohms, or a number of steps")
            Quantity quantity,

            @Field("What is good") Bounds bounds) {}

    /** What can be limited. */
    public enum Quantity {
        SHORT_CIRCUIT_CURRENT,
        OPEN_CIRCUIT_VOLTAGE,
        MAXIMUM_POWER,
        FILL_FACTOR,
        SHUNT_SLOPE,
        SERIES_SLOPE,
        BYPASS_STEPS,
        MODEL_SERIES,
        MODEL_SHUNT
    }
}
