package dev.sunthread.electrical.curve;

import dev.sunthread.kernel.verdict.Phrase;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunction;
import org.apache.commons.math3.fitting.PolynomialCurveFitter;
import org.apache.commons.math3.fitting.WeightedObservedPoints;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * How the maximum power is found: the largest measured point for order 0, else the maximum of a polynomial of power over
 * voltage through the points around it. Different methods differ by some thousandths, so the method is kept with the
 * result.
 *
 * @param order of the polynomial
 * @param points how many points it is fitted to
 */
public record PowerMethod(int order, int points) {

    /** The largest measured product of voltage and current. */
    public static final PowerMethod LARGEST_POINT = new PowerMethod(0, 1);

    /** The parabola through the largest point and its two neighbours. */
    public static final PowerMethod THREE_POINT = new PowerMethod(2, 3);

    private static final double TOLERANCE = 1e-12;

    /** @throws IllegalArgumentException if the points do not determine the polynomial */
    public PowerMethod {
        if (order < 0 || order == 1 || points < order + 1) {
            throw new IllegalArgumentException(points + " points give no maximum of a polynomial of order " + order);
        }
    }

    public Phrase words() {
        if (order == 0) {
            return Phrase.of("judged.power.largest");
        }
        return equals(THREE_POINT)
                ? Phrase.of("judged.power.three-point")
                : Phrase.of("judged.power.polynomial", String.valueOf(order), String.valueOf(points));
    }

    MaximumPower of(Curve curve) {
        int top = largest(curve);
        if (order == 0) {
            return new MaximumPower(curve.volts(top), curve.amperes(top), this);
        }
        int first = Math.max(0, Math.min(top - points / 2, curve.size() - points));
        int last = Math.min(curve.size(), first + points) - 1;
        return last - first < order ? LARGEST_POINT.of(curve) : fitted(curve, top, first, last);
    }

    private static int largest(Curve curve) {
        int top = 0;
        for (int i = 1; i < curve.size(); i++) {
            top = curve.watts(i) > curve.watts(top) ? i : top;
        }
        return top;
    }

    /** Voltages count from the largest point, in parts of the stretch, so that the fit is well conditioned. */
    private MaximumPower fitted(Curve curve, int top, int first, int last) {
        double middle = curve.volts(top);
        double stretch = curve.volts(last) - curve.volts(first);
        WeightedObservedPoints near = new WeightedObservedPoints();
        for (int i = first; i <= last; i++) {
            near.add((curve.volts(i) - middle) / stretch, curve.watts(i));
        }
        PolynomialFunction power =
                new PolynomialFunction(PolynomialCurveFitter.create(order).fit(near.toList()));
        double from = (curve.volts(Math.max(first, top - 1)) - middle) / stretch;
        double to = (curve.volts(Math.min(last, top + 1)) - middle) / stretch;
        double at = maximum(power, from, to);
        double volts = middle + at * stretch;
        return new MaximumPower(volts, power.value(at) / volts, this);
    }

    private static double maximum(PolynomialFunction power, double from, double to) {
        return new BrentOptimizer(TOLERANCE, TOLERANCE)
                .optimize(
                        new UnivariateObjectiveFunction(power),
                        GoalType.MAXIMIZE,
                        new SearchInterval(from, to),
                        new MaxEval(500))
                .getPoint();
    }
}
