package dev.sunthread.cure.kinetics;

/**
 * A rate that grows with temperature as {@code A exp(-E / RT)}.
 *
 * @param perSecond the factor A
 * @param energy the activation energy E in J/mol
 */
public record Arrhenius(double perSecond, double energy) {

    /** The molar gas constant in J/(mol K), rounded as published cure models use it. */
    public static final double GAS = 8.3145;

    private static final double ZERO_CELSIUS = 273.15;

    /** @throws IllegalArgumentException if the rate would fall with temperature, or be negative */
    public Arrhenius {
        if (!(perSecond >= 0) || !(energy >= 0) || Double.isInfinite(perSecond) || Double.isInfinite(energy)) {
            throw new IllegalArgumentException("no rate is " + perSecond + " exp(-" + energy + " / RT)");
        }
    }

    public static double kelvin(double celsius) {
        return celsius + ZERO_CELSIUS;
    }

    /** The rate at a temperature, per second. */
    public double at(double kelvin) {
        return perSecond == 0 ? 0 : perSecond * Math.exp(-energy / (GAS * kelvin));
    }
}
