package dev.sunthread.electrical.curve;

import dev.sunthread.kernel.verdict.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Between which bounds the true current of a curve runs from point to point. It nowhere rises with the voltage; where the
 * points agree, it nowhere bends upwards either, so it lies above the line between two points and below the lines through
 * their neighbours.
 */
final class Course {

    private static final int FARTHEST = 5;
    private static final int BESIDE = 3;

    private final Curve curve;

    Course(Curve curve) {
        this.curve = curve;
    }

    /** A line that the current lies below, on one side of its points. */
    record Ceiling(double volts, double amperes, double perVolt) {

        double at(double voltage) {
            return amperes + (voltage - volts) * perVolt;
        }
    }

    double low(int i) {
        return curve.amperes(i) - curve.bound(i);
    }

    double high(int i) {
        return curve.amperes(i) + curve.bound(i);
    }

    /** Whether a point beside two others lies above all lines through them, so that the curve bends upwards there. */
    private boolean bendsUp(int from, int to) {
        double run = curve.volts(to) - curve.volts(from);
        return IntStream.rangeClosed(Math.max(0, from - BESIDE), Math.min(curve.size() - 1, to + BESIDE))
                .anyMatch(i -> i < from
                        ? low(i) > high(from) + (high(from) - low(to)) / run * (curve.volts(from) - curve.volts(i))
                        : i > to
                                && low(i)
                                        > high(to) + (high(to) - low(from)) / run * (curve.volts(i) - curve.volts(to)));
    }

    private boolean reaches(Ceiling ceiling, int until) {
        return until < 0 || until >= curve.size() || ceiling.at(curve.volts(until)) >= low(until);
    }

    /** Lines through points up to one, that hold above it as far as another point, which they do not contradict. */
    List<Ceiling> fromLeft(int last, int until) {
        List<Ceiling> ceilings = new ArrayList<>();
        for (int i = last - 1; i >= Math.max(0, last - FARTHEST); i--) {
            double run = curve.volts(last) - curve.volts(i);
            Ceiling ceiling = new Ceiling(curve.volts(last), high(last), (high(last) - low(i)) / run);
            if (run > 0 && !bendsUp(i, last) && reaches(ceiling, until)) {
                ceilings.add(ceiling);
            }
        }
        return ceilings;
    }

    /** Lines through points from one on, that hold below it as far as another point, which they do not contradict. */
    List<Ceiling> fromRight(int first, int until) {
        List<Ceiling> ceilings = new ArrayList<>();
        for (int i = first + 1; i <= Math.min(curve.size() - 1, first + FARTHEST); i++) {
            double run = curve.volts(i) - curve.volts(first);
            Ceiling ceiling = new Ceiling(curve.volts(first), high(first), (low(i) - high(first)) / run);
            if (run > 0 && !bendsUp(first, i) && reaches(ceiling, until)) {
                ceilings.add(ceiling);
            }
        }
        return ceilings;
    }

    /** All that bounds the current from above between a point and the next. */
    List<Ceiling> between(int left) {
        List<Ceiling> ceilings = new ArrayList<>(fromLeft(left, left + 1));
        ceilings.addAll(fromRight(left + 1, left));
        ceilings.add(new Ceiling(curve.volts(left), high(left), 0));
        return ceilings;
    }

    /** Whether neither side contradicts that the curve bends down between two points. */
    private boolean bendsDown(int left, int right) {
        return (left == 0 || !fromLeft(left, right).isEmpty())
                && (right == curve.size() - 1 || !fromRight(right, left).isEmpty());
    }

    /** The current at a voltage that is not above the last point. */
    Span amperesAt(double voltage) {
        int left = IntStream.range(0, curve.size())
                .filter(i -> curve.volts(i) <= voltage)
                .reduce((one, next) -> next)
                .orElse(-1);
        if (left < 0) {
            double below = IntStream.range(0, curve.size())
                    .mapToDouble(this::low)
                    .max()
                    .orElseThrow();
            return bounded(below, fromRight(0, -1), voltage, Double.POSITIVE_INFINITY);
        }
        int right = Math.min(left + 1, curve.size() - 1);
        double part = right == left ? 0 : (voltage - curve.volts(left)) / (curve.volts(right) - curve.volts(left));
        double chord = low(left) + part * (low(right) - low(left));
        double below = part == 0 ? low(left) : bendsDown(left, right) ? chord : low(right);
        return bounded(below, right == left ? List.of() : between(left), voltage, high(left));
    }

    private static Span bounded(double below, List<Ceiling> ceilings, double voltage, double most) {
        double above =
                ceilings.stream().mapToDouble(ceiling -> ceiling.at(voltage)).reduce(most, Math::min);
        return Span.between(below, Math.max(below, above));
    }

    /** The voltage at which the current has fallen to a level; without bound above if the sweep ends before. */
    Span voltsAt(double level) {
        int left = IntStream.range(0, curve.size())
                .filter(i -> low(i) > level)
                .reduce((one, next) -> next)
                .orElse(-1);
        int right = IntStream.range(0, curve.size())
                .filter(i -> high(i) < level)
                .findFirst()
                .orElse(curve.size());
        if (left < 0) {
            return new Span(
                    Double.NEGATIVE_INFINITY, right < curve.size() ? curve.volts(right) : Double.POSITIVE_INFINITY);
        }
        double above = right < curve.size() ? curve.volts(right) : Double.POSITIVE_INFINITY;
        for (Ceiling ceiling : fromLeft(left, right)) {
            above = Math.min(above, meets(ceiling, level));
        }
        if (right < curve.size()) {
            for (Ceiling ceiling : fromRight(right, left)) {
                above = Math.min(above, Math.max(curve.volts(left), meets(ceiling, level)));
            }
        }
        double below = curve.volts(left);
        if (right < curve.size() && bendsDown(left, right)) {
            below += (low(left) - level) / (low(left) - low(right)) * (curve.volts(right) - curve.volts(left));
        }
        return Span.between(below, Math.max(below, above));
    }

    private static double meets(Ceiling ceiling, double level) {
        return ceiling.perVolt() < 0
                ? ceiling.volts() + (level - ceiling.amperes()) / ceiling.perVolt()
                : Double.POSITIVE_INFINITY;
    }
}
