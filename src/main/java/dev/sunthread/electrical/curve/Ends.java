package dev.sunthread.electrical.curve;

import dev.sunthread.kernel.Refused;
import java.util.List;
import java.util.stream.IntStream;

/** Where a curve meets its axes. */
final class Ends {

    /** A line through points within this part of the open-circuit voltage gives the current at short circuit. */
    private static final double NEAR = 0.03;

    private Ends() {}

    /** The voltage without current. @throws Refused if the sweep ends before */
    static double openCircuit(Curve curve) {
        for (int i = 1; i < curve.size(); i++) {
            double before = curve.amperes(i - 1);
            double behind = curve.amperes(i);
            if (before > 0 && behind <= 0) {
                return curve.volts(i - 1) + before / (before - behind) * (curve.volts(i) - curve.volts(i - 1));
            }
        }
        throw new Refused(
                "The sweep never reaches open circuit: its current "
                        + (curve.amperes(0) <= 0 ? "is never positive" : "never falls to nought"),
                "Sweep until the current turns negative, and state currents that light drives as positive");
    }

    /** The current without voltage; what had to be assumed is told. @throws Refused if no point is near enough */
    static double shortCircuit(Curve curve, double openCircuit, List<String> remarks) {
        if (curve.volts(0) <= 0) {
            return curve.amperesAt(0);
        }
        int[] near = IntStream.range(0, curve.size())
                .filter(i -> curve.volts(i) <= NEAR * openCircuit)
                .toArray();
        if (near.length < 2) {
            throw new Refused(
                    "The sweep begins at " + curve.volts(0) + " V with " + near.length + " points near short circuit",
                    "Sweep from a voltage of nought or less, or take two points within 3 % of the open-circuit voltage");
        }
        remarks.add("No point at or below 0 V; the current at short circuit is on the line through the first "
                + near.length + " points");
        return Line.through(curve, IntStream.of(near)).atZero();
    }
}
