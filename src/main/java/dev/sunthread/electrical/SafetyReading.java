package dev.sunthread.electrical;

import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import java.math.BigDecimal;

/** What a tester of insulation or ground path read, as it came. */
record SafetyReading(
        @Field("What was measured") Path path,
        @Field("The voltage over it, in volts") BigDecimal volts,
        @Field("The current through it, in amperes") BigDecimal amperes,
        @Field("For how many seconds it was held") BigDecimal seconds) {

    /** What current was driven through. */
    enum Path {
        INSULATION,
        GROUND
    }

    SafetyReading {
        if (seconds.signum() < 0) {
            throw new Contradiction("seconds", "is less than nought", "Give for how long it was held, or 0");
        }
    }
}
