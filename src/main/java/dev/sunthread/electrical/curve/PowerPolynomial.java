package dev.sunthread.electrical.curve;

import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;

/**
 * Power over voltage by least squares. Voltages count from a point in the middle, in parts of the stretch, so that the fit is
 * well conditioned.
 */
record PowerPolynomial(PolynomialFunction power, double middle, double stretch) {

    private static final int GRID = 400;
    private static final int ROUNDS = 6;

    /** @throws IllegalArgumentException if the points do not determine it */
    static PowerPolynomial through(Curve curve, int order, int top, IntStream points) {
        int[] taken = points.toArray();
        double middle = curve.volts(top);
        double stretch = curve.volts(taken[taken.length - 1]) - curve.volts(taken[0]);
        double[][] powers = new double[taken.length][order + 1];
        double[] watts = new double[taken.length];
        for (int row = 0; row < taken.length; row++) {
            for (int column = 0; column <= order; column++) {
                powers[row][column] = Math.pow((curve.volts(taken[row]) - middle) / stretch, column);
            }
            watts[row] = curve.watts(taken[row]);
        }
        double[] coefficients = new QRDecomposition(new Array2DRowRealMatrix(powers, false))
                .getSolver()
                .solve(new ArrayRealVector(watts, false))
                .toArray();
        return new PowerPolynomial(new PolynomialFunction(coefficients), middle, stretch);
    }

    /** Where it is highest between two voltages, on a grid that grows finer around the highest point. */
    Curve.Point maximum(double from, double to) {
        double low = (from - middle) / stretch;
        double high = (to - middle) / stretch;
        double best = low;
        for (int round = 0; round < ROUNDS; round++) {
            double step = (high - low) / GRID;
            for (int i = 0; i <= GRID; i++) {
                double at = low + i * step;
                best = power.value(at) > power.value(best) ? at : best;
            }
            low = Math.max(low, best - step);
            high = Math.min(high, best + step);
        }
        double volts = middle + best * stretch;
        return new Curve.Point(volts, power.value(best) / volts);
    }
}
