package dev.sunthread.electrical.curve;

import dev.sunthread.kernel.verdict.Span;
import java.util.List;
import java.util.stream.IntStream;

/** Between which values lies what a curve under light says, as far as its points tell: they scatter, and stand apart. */
public final class CurveSpans {

    private static final int PARTS = 64;

    private final Curve curve;
    private final Course course;

    public CurveSpans(Curve curve) {
        this.curve = curve;
        this.course = new Course(curve);
    }

    /** In amperes. @throws dev.sunthread.kernel.verdict.Unusable if no point is near enough */
    public Span shortCircuit() {
        Ends.nearShortCircuit(curve);
        return course.amperesAt(0);
    }

    /** In volts. @throws dev.sunthread.kernel.verdict.Unusable if the sweep ends before */
    public Span openCircuit() {
        Ends.openCircuit(curve);
        return course.voltsAt(0);
    }

    /** In watts; without bound above if the power still rises where the sweep ends. */
    public Span power() {
        int size = curve.size();
        double least = IntStream.range(0, size)
                .filter(i -> curve.volts(i) > 0)
                .mapToDouble(i -> curve.volts(i) * course.low(i))
                .max()
                .orElse(0);
        int top = PowerMethod.largest(curve);
        if (top >= size - 1 || curve.amperes(size - 1) > 0 && top >= size - 2) {
            return new Span(least, Double.POSITIVE_INFINITY);
        }
        double most = IntStream.range(0, size - 1)
                .mapToDouble(left -> most(left, least))
                .reduce(least, Math::max);
        return new Span(least, most);
    }

    /** The most power between a point and the next, unless that can't be more than another point surely has. */
    private double most(int left, double least) {
        double from = Math.max(0, curve.volts(left));
        double to = curve.volts(left + 1);
        if (to <= 0 || to * course.high(left) <= least) {
            return least;
        }
        List<Course.Ceiling> ceilings = course.between(left);
        double most = least;
        for (int part = 0; part < PARTS; part++) {
            double begin = from + (to - from) * part / PARTS;
            double end = from + (to - from) * (part + 1) / PARTS;
            double amperes = ceilings.stream()
                    .mapToDouble(ceiling -> Math.max(ceiling.at(begin), ceiling.at(end)))
                    .min()
                    .orElseThrow();
            most = Math.max(most, end * amperes);
        }
        return most;
    }

    /** The maximum power as a part of the product of short-circuit current and open-circuit voltage. */
    public Span fillFactor() {
        Span power = power();
        Span current = shortCircuit();
        Span voltage = openCircuit();
        double least = power.low() / (current.high() * voltage.high());
        double most = power.high() / (current.low() * voltage.low());
        return current.low() > 0 && voltage.low() > 0
                ? Span.between(least, Math.max(least, Math.min(1, most)))
                : new Span(Math.max(0, least), Double.POSITIVE_INFINITY);
    }

    /** The resistance of the slope at short circuit, in ohms. */
    public Span shunt() {
        return new Slopes(curve).ohmsAt(Span.exactly(0));
    }

    /** The resistance of the slope at open circuit, in ohms. */
    public Span series() {
        return new Slopes(curve).ohmsAt(openCircuit());
    }
}
