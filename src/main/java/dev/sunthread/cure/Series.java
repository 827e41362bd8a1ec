package dev.sunthread.cure;

import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What one sensor measured during a run, as it came: never smoothed, never completed. */
record Series(
        @Field("The sensor, by its mark") String sensor,

        @Field("Where in the equipment it sat, if known") @Nullable
        String position,

        @Field("What it measured") Quantity quantity,

        @Field("The unit of its readings, such as degC, W/m2 or %RH")
        String unitOfMeasure,

        @Field(value = "When each reading was taken, in seconds after the run began", atLeast = 1)
        List<BigDecimal> seconds,

        @Field(value = "The readings, one to each of these times", atLeast = 1)
        List<BigDecimal> readings) {

    Series {
        if (seconds.size() != readings.size()) {
            throw new Contradiction(
                    "readings",
                    "has " + readings.size() + " readings for " + seconds.size() + " times",
                    "Give one reading to each time");
        }
    }
}
