package dev.sunthread.cure.kinetics;

import dev.sunthread.cure.profile.Segment;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Integrates over time what grows with temperature by Arrhenius, along lines of temperature in degrees Celsius. A line is
 * cut into pieces over which it neither grows by more than some e-folds nor warms by more than some kelvin; the number of
 * pieces is bounded.
 */
final class AlongHeat {

    private static final int MOST_PIECES = 1_000_000;
    private static final double WIDEST_PIECE = 10;
    private static final double STEEPEST_PIECE = 2;
    private static final int POINTS = 8;
    private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();

    private AlongHeat() {}

    /**
     * The integral over all lines.
     *
     * @param energy the activation energy in J/mol
     * @param factor what is integrated, by degrees Celsius
     * @throws ArithmeticException if the lines span temperatures at which nothing can be computed
     */
    static double integral(double energy, List<Segment> celsius, DoubleUnaryOperator factor) {
        double pieces =
                celsius.stream().mapToDouble(line -> pieces(energy, line)).sum();
        if (!(pieces <= MOST_PIECES + celsius.size())) {
            throw new ArithmeticException("the temperatures are too far apart");
        }
        return celsius.stream()
                .mapToDouble(line -> integral(line, (int) pieces(energy, line), factor))
                .sum();
    }

    private static double pieces(double energy, Segment line) {
        double folds = energy / Arrhenius.GAS * Math.abs(1 / kelvin(line.first()) - 1 / kelvin(line.last()));
        double widths = Math.abs(line.last() - line.first()) / WIDEST_PIECE;
        return 1 + Math.floor(Math.max(folds / STEEPEST_PIECE, widths));
    }

    private static double kelvin(double celsius) {
        double kelvin = Arrhenius.kelvin(celsius);
        if (!(kelvin > 0)) {
            throw new ArithmeticException(celsius + " degC is below the least temperature");
        }
        return kelvin;
    }

    private static double integral(Segment line, int pieces, DoubleUnaryOperator factor) {
        double sum = 0;
        for (int piece = 0; piece < pieces; piece++) {
            double from = line.start() + line.seconds() * piece / pieces;
            double to = line.start() + line.seconds() * (piece + 1) / pieces;
            sum += from < to
                    ? GAUSS.legendre(POINTS, from, to).integrate(second -> factor.applyAsDouble(line.at(second)))
                    : 0;
        }
        return sum;
    }
}
