package dev.sunthread.electrical.terms;

import java.math.BigDecimal;

/**
 * What an insulation or ground tester read: the voltage, the current that flowed, and for how long it was held. Readings are
 * compared as decimals, as they are written.
 *
 * @param ground whether the path to ground was measured; otherwise the insulation
 */
public record SafetyReading(boolean ground, BigDecimal volts, BigDecimal amperes, BigDecimal seconds) {

    /** Whether there is neither voltage nor current to divide: leads that are open, or not measured, read the same. */
    boolean showsNothing() {
        return volts.signum() == 0 || amperes.signum() == 0;
    }
}
