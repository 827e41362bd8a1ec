package dev.sunthread.electrical.curve;

import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Span;
import java.util.stream.IntStream;

/**
 * How the maximum power is found: the largest measured point for order 0, else the maximum of a polynomial of power over
 * voltage by least squares through the points around it. Different methods differ by some thousandths, so the method is
 * kept with the result.
 *
 * @param order of the polynomial
 * @param points how many points it is fitted to; 0 for all within a part of the voltage and current of the largest one
 */
public record PowerMethod(int order, int points) {

    /** The largest measured product of voltage and current. */
    public static final PowerMethod LARGEST_POINT = new PowerMethod(0, 1);

    /** The parabola through the largest point and its two neighbours. */
    public static final PowerMethod THREE_POINT = new PowerMethod(2, 3);

    /**
     * A polynomial of fourth order through all points with 0.75 to 1.15 of the voltage and current of the largest one, as
     * ASTM E1036 has it (window and order from memory); of lower order where the points leave a higher one free to swing.
     */
    public static final PowerMethod LEAST_SQUARES = new PowerMethod(4, 0);

    private static final double FROM = 0.75;
    private static final double TO = 1.15;

    /** @throws IllegalArgumentException if the points do not determine the polynomial */
    public PowerMethod {
        if (order < 0 || order == 1 || points != 0 && points < order + 1 || points == 0 && order == 0) {
            throw new IllegalArgumentException(points + " points give no maximum of a polynomial of order " + order);
        }
    }

    public Phrase words() {
        if (order == 0) {
            return Phrase.of("judged.power.largest");
        }
        if (points == 0) {
            return Phrase.of("judged.power.least-squares", String.valueOf(order));
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
        if (points == 0) {
            return within(curve, top);
        }
        int first = Math.max(0, Math.min(top - points / 2, curve.size() - points));
        int last = Math.min(curve.size(), first + points) - 1;
        return last - first < order
                ? LARGEST_POINT.of(curve)
                : found(PowerPolynomial.through(curve, order, top, IntStream.rangeClosed(first, last))
                        .maximum(curve.volts(Math.max(first, top - 1)), curve.volts(Math.min(last, top + 1))));
    }

    /** Of the highest order, up to the stated one, whose maximum the points allow. */
    private MaximumPower within(Curve curve, int top) {
        int[] near = IntStream.range(0, curve.size())
                .filter(i -> isNear(curve.volts(i), curve.volts(top)) && isNear(curve.amperes(i), curve.amperes(top)))
                .toArray();
        Span allowed = new CurveSpans(curve).power();
        for (int tried = Math.min(order, near.length - 2); tried >= 2; tried--) {
            MaximumPower maximum = found(PowerPolynomial.through(curve, tried, top, IntStream.of(near))
                    .maximum(curve.volts(near[0]), curve.volts(near[near.length - 1])));
            if (maximum.watts() >= allowed.low() && maximum.watts() <= allowed.high()) {
                return maximum;
            }
        }
        return LARGEST_POINT.of(curve);
    }

    private static boolean isNear(double value, double top) {
        return value >= FROM * top && value <= TO * top;
    }

    private MaximumPower found(Curve.Point maximum) {
        return new MaximumPower(maximum.volts(), maximum.amperes(), this);
    }

    static int largest(Curve curve) {
        return IntStream.range(0, curve.size())
                .reduce((one, next) -> curve.watts(next) > curve.watts(one) ? next : one)
                .orElseThrow();
    }
}
