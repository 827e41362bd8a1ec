package dev.sunthread.cure.kinetics;

import dev.sunthread.cure.profile.Segment;
import java.util.List;

/**
 * How long a reaction would have taken at one temperature to go as far as along a profile:
 * {@code integral of exp((E / R) (1 / Tref - 1 / T)) dt}.
 *
 * @param energy the activation energy E in J/mol
 * @param reference the temperature it is stated for, in degrees Celsius
 */
public record EquivalentTime(double energy, double reference) {

    /** How much faster the reaction goes at a temperature, in degrees Celsius, than at the reference. */
    public double factor(double celsius) {
        return Math.exp(energy / Arrhenius.GAS * (1 / Arrhenius.kelvin(reference) - 1 / Arrhenius.kelvin(celsius)));
    }

    /**
     * In seconds, along lines of temperature in degrees Celsius.
     *
     * @throws ArithmeticException if nothing can be computed at these temperatures
     */
    public double seconds(List<Segment> celsius) {
        return AlongHeat.integral(energy, celsius, this::factor);
    }
}
