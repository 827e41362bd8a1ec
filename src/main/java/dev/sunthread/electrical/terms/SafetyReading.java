package dev.sunthread.electrical.terms;

/**
 * What an insulation or ground tester read: the voltage, the current that flowed, and for how long it was held.
 *
 * @param ground whether the path to ground was measured; otherwise the insulation
 */
public record SafetyReading(boolean ground, double volts, double amperes, double seconds) {

    /** Voltage over current, in ohms; infinite without a current. */
    public double ohms() {
        return amperes == 0 ? Double.POSITIVE_INFINITY : Math.abs(volts / amperes);
    }
}
