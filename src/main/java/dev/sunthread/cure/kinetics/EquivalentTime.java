package dev.sunthread.cure.kinetics;

import dev.sunthread.cure.profile.Segment;
import java.util.List;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * How long a reaction would have taken at one temperature to go as far as along a profile:
 * {@code integral of exp((E / R) (1 / Tref - 1 / T)) dt}.
 *
 * @param energy the activation energy E in J/mol
 * @param reference the temperature it is stated for, in degrees Celsius
 */
public record EquivalentTime(double energy, double reference) {

    private static final double WIDEST_PIECE = 10;
    private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();
    private static final int POINTS = 8;

    /** How much faster the reaction goes at a temperature, in degrees Celsius, than at the reference. */
    public double factor(double celsius) {
        return Math.exp(energy / Arrhenius.GAS * (1 / Arrhenius.kelvin(reference) - 1 / Arrhenius.kelvin(celsius)));
    }

    /** In seconds, along lines of temperature in degrees Celsius. */
    public double seconds(List<Segment> celsius) {
        return celsius.stream().mapToDouble(this::seconds).sum();
    }

    private double seconds(Segment line) {
        int pieces = 1 + (int) (Math.abs(line.last() - line.first()) / WIDEST_PIECE);
        double sum = 0;
        for (int piece = 0; piece < pieces; piece++) {
            double from = line.start() + line.seconds() * piece / pieces;
            double to = line.start() + line.seconds() * (piece + 1) / pieces;
            sum += from < to ? gauss(from, to).integrate(second -> factor(line.at(second))) : 0;
        }
        return sum;
    }

    private static GaussIntegrator gauss(double from, double to) {
        return GAUSS.legendre(POINTS, from, to);
    }
}
