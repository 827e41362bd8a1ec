package dev.sunthread.electrical.diode;

/**
 * A light source, a diode, and two resistances:
 * {@code I = Iph - I0 (exp((V + I Rs) / a) - 1) - (V + I Rs) / Rsh} with {@code a = n Ns k T / q}.
 *
 * @param photo the current Iph that light drives
 * @param saturation the current I0
 * @param slope the voltage a over which the diode's current grows by e
 * @param conductance of the shunt, 1 / Rsh in siemens
 */
public record SingleDiode(double photo, double saturation, double slope, double series, double conductance) {

    private static final double CLOSE = 1e-15;
    private static final int STEPS = 200;

    /** By how much a point breaks the equation, in amperes. */
    public double residual(double volts, double amperes) {
        double junction = volts + amperes * series;
        return photo - saturation * Math.expm1(junction / slope) - junction * conductance - amperes;
    }

    /** How the residual changes with the current. */
    double perAmpere(double volts, double amperes) {
        double growth = Math.exp((volts + amperes * series) / slope);
        return -1 - saturation * growth * series / slope - series * conductance;
    }

    /**
     * The current at a voltage, by Newton's method. The residual falls with the current and bends down, so from a
     * current that is too high every step goes down and none goes too far. It ends after a bounded number of steps, with no number if there is none.
     */
    public double current(double volts) {
        double amperes = highest(volts);
        for (int step = 0; step < STEPS; step++) {
            double next = amperes - residual(volts, amperes) / perAmpere(volts, amperes);
            if (Math.abs(next - amperes) <= CLOSE * (1 + Math.abs(next))) {
                return next;
            }
            if (Double.isNaN(next)) {
                return next;
            }
            amperes = next;
        }
        return amperes;
    }

    /** A current that is not below the one sought: the diode passes no more than light drives while any current is left. */
    private double highest(double volts) {
        double most = photo + Math.max(0, -volts * conductance);
        double junction = slope * Math.log1p(photo / saturation);
        return series > 0 && photo > 0 ? Math.min(most, Math.max(0, (junction - volts) / series)) : most;
    }

    /** The resistance of the shunt in ohms. */
    public double shunt() {
        return 1 / conductance;
    }

    /** The ideality n of each diode in a string. */
    public double ideality(int cells, double kelvin) {
        return slope / (cells * thermalVoltage(kelvin));
    }

    /** {@code k T / q} in volts, with the constants of the SI of 2019. */
    public static double thermalVoltage(double kelvin) {
        return 1.380649e-23 * kelvin / 1.602176634e-19;
    }
}
