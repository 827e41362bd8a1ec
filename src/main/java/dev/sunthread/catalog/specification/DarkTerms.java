package dev.sunthread.catalog.specification;

import dev.sunthread.catalog.recipe.Bounds;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What one sweep without light must show. */
public record DarkTerms(
        @Field("The sweep, by its name") String sweep,

        @Field(value = "The forward current in amperes at which the forward voltage is taken", positive = true)
        BigDecimal current,

        @Field("How many points give each slope; absent for 5") @Nullable
        Integer points,

        @Field(value = "Each quantity with what is good", atLeast = 1)
        List<DarkBounds> limits) {

    public DarkTerms {
        if (points != null && points < 2) {
            throw new Contradiction("points", "are too few for a line", "Give at least 2");
        }
    }

    /** A quantity of the dark curve with what is good. */
    public record DarkBounds(
            @Field("The quantity: volts, or ohms of a slope")
            Quantity quantity,

            @Field("What is good") Bounds bounds) {}

    /** What can be limited. */
    public enum Quantity {
        FORWARD_VOLTAGE,
        SHUNT_SLOPE,
        SERIES_SLOPE
    }
}
