package dev.sunthread.electrical.curve;

/** The point of a curve where it gives the most power, with the method that found it. */
public record MaximumPower(double volts, double amperes, PowerMethod method) {

    public double watts() {
        return volts * amperes;
    }
}
