package dev.sunthread.electrical;

import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The points of one sweep in the order in which they were measured: never sorted, never completed. */
record Sweep(
        @Field("What was swept, such as light or dark") String name,

        @Field("The irradiance it was measured under, in W/m2") @Nullable
        BigDecimal irradiance,

        @Field("The temperature of the cells meanwhile, in degrees Celsius") @Nullable
        BigDecimal cellTemperature,

        @Field(value = "The voltages, in volts", atLeast = 1)
        List<BigDecimal> volts,

        @Field(value = "The current at each of these, in amperes", atLeast = 1)
        List<BigDecimal> amperes) {

    Sweep {
        if (volts.size() != amperes.size()) {
            throw new Contradiction(
                    "amperes",
                    "has " + amperes.size() + " currents for " + volts.size() + " voltages",
                    "Give one current to each voltage");
        }
        if (irradiance != null && irradiance.signum() < 0) {
            throw new Contradiction("irradiance", "is less than nought", "Give the irradiance in W/m2, or 0 for dark");
        }
    }
}
