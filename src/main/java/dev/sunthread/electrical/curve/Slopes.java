package dev.sunthread.electrical.curve;

import dev.sunthread.kernel.verdict.Span;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The resistance of a curve's slope at a voltage. A curve that nowhere bends upwards is flatter left of the voltage and
 * steeper right of it, so lines of least squares through points of either side bound it, each with what scatter leaves open.
 */
final class Slopes {

    private static final int MOST = 40;

    private final Curve curve;

    Slopes(Curve curve) {
        this.curve = curve;
    }

    /** Siemens that a slope has at least, or at most. */
    private record Side(double least, double most) {}

    /** In ohms, at a voltage that is known to lie in a span; nothing bounds a slope that may be level. */
    Span ohmsAt(Span voltage) {
        int[] left = IntStream.range(0, curve.size())
                .filter(i -> curve.volts(i) <= voltage.low())
                .toArray();
        int[] right = IntStream.range(0, curve.size())
                .filter(i -> curve.volts(i) >= voltage.high())
                .toArray();
        double least = IntStream.rangeClosed(2, Math.min(MOST, left.length))
                .mapToObj(count -> side(IntStream.of(left).skip(left.length - count)))
                .mapToDouble(Side::least)
                .reduce(0, Math::max);
        double most = most(right);
        return least > most || most <= 0
                ? new Span(0, Double.POSITIVE_INFINITY)
                : new Span(1 / most, least <= 0 ? Double.POSITIVE_INFINITY : 1 / least);
    }

    /** The least bound from above of all counts of points, unless fewer of them show that the curve is steeper there. */
    private double most(int[] right) {
        double most = Double.POSITIVE_INFINITY;
        double surely = 0;
        for (int count = 2; count <= Math.min(MOST, right.length); count++) {
            Side side = side(IntStream.of(right).limit(count));
            surely = Math.max(surely, count <= 4 ? side.least() : 0);
            most = side.most() >= surely ? Math.min(most, side.most()) : most;
        }
        return most;
    }

    private Side side(IntStream points) {
        int[] taken = points.toArray();
        double middle = IntStream.of(taken).mapToDouble(curve::volts).average().orElseThrow();
        double squares = IntStream.of(taken)
                .mapToDouble(curve::volts)
                .map(v -> (v - middle) * (v - middle))
                .sum();
        double slope = IntStream.of(taken)
                        .mapToDouble(i -> -(curve.volts(i) - middle) * curve.amperes(i))
                        .sum()
                / squares;
        double open = Scatter.together(DoubleStream.of(IntStream.of(taken)
                                .mapToDouble(i -> (curve.volts(i) - middle) * curve.bound(i))
                                .toArray())
                        .toArray())
                / squares;
        open += IntStream.of(taken)
                        .mapToDouble(i -> Math.abs(curve.volts(i) - middle) * curve.rounded(i))
                        .sum()
                / squares;
        return squares > 0 ? new Side(slope - open, slope + open) : new Side(0, Double.POSITIVE_INFINITY);
    }
}
