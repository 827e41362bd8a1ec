package dev.sunthread.electrical.curve;

import java.util.ArrayList;
import java.util.List;

/**
 * Steps in the curve of a series string, where the bypass diode of a weak cell takes over. A string without them has a
 * curve that nowhere bends upwards, so a step is where the curve lies below its own upper hull.
 */
public final class BypassSteps {

    /**
     * One step.
     *
     * @param volts where the curve lies lowest below its hull
     * @param depth how far below, as a part of the short-circuit current
     */
    public record Step(double volts, double depth) {}

    private BypassSteps() {}

    /**
     * The steps from low to high voltage.
     *
     * @param shallowest from what depth on, as a part of the short-circuit current, it is more than noise
     */
    public static List<Step> of(Curve curve, double shortCircuit, double shallowest) {
        List<Integer> hull = upperHull(curve);
        List<Step> steps = new ArrayList<>();
        for (int edge = 1; edge < hull.size(); edge++) {
            Step deepest = deepest(curve, hull.get(edge - 1), hull.get(edge), shortCircuit);
            if (deepest.depth() > shallowest) {
                steps.add(deepest);
            }
        }
        return steps;
    }

    private static List<Integer> upperHull(Curve curve) {
        List<Integer> hull = new ArrayList<>();
        for (int i = 0; i < curve.size() && curve.amperes(i) >= 0; i++) {
            while (hull.size() > 1 && !turnsDown(curve, hull.get(hull.size() - 2), hull.get(hull.size() - 1), i)) {
                hull.remove(hull.size() - 1);
            }
            hull.add(i);
        }
        return hull;
    }

    private static boolean turnsDown(Curve curve, int one, int middle, int other) {
        return below(curve, one, other, middle) < 0;
    }

    /** By how much the point in the middle lies below the line from one point to another. */
    private static double below(Curve curve, int one, int other, int middle) {
        double part = (curve.volts(middle) - curve.volts(one)) / (curve.volts(other) - curve.volts(one));
        return curve.amperes(one) + part * (curve.amperes(other) - curve.amperes(one)) - curve.amperes(middle);
    }

    private static Step deepest(Curve curve, int from, int to, double shortCircuit) {
        Step deepest = new Step(curve.volts(from), 0);
        for (int i = from + 1; i < to; i++) {
            double depth = below(curve, from, to, i) / shortCircuit;
            deepest = depth > deepest.depth() ? new Step(curve.volts(i), depth) : deepest;
        }
        return deepest;
    }
}
