package dev.sunthread.electrical.curve;

import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Unusable;
import java.util.List;
import java.util.stream.IntStream;

/** Where a curve meets its axes. */
final class Ends {

    /** A line through points within this part of the open-circuit voltage gives the current at short circuit. */
    private static final double NEAR = 0.03;

    private Ends() {}

    /** The voltage without current. @throws Unusable if the sweep ends before */
    static double openCircuit(Curve curve) {
        for (int i = 1; i < curve.size(); i++) {
            double before = curve.amperes(i - 1);
            double behind = curve.amperes(i);
            if (before > 0 && behind <= 0) {
                return curve.volts(i - 1) + before / (before - behind) * (curve.volts(i) - curve.volts(i - 1));
            }
        }
        throw new Unusable(
                Phrase.of(curve.amperes(0) <= 0 ? "judged.sweep.never-positive" : "judged.sweep.no-open-circuit"),
                Phrase.of("judged.sweep.no-open-circuit.remedy"));
    }

    /** The current without voltage; what had to be assumed is told. @throws Unusable if no point is near enough */
    static double shortCircuit(Curve curve, double openCircuit, List<Phrase> remarks) {
        nearShortCircuit(curve);
        if (curve.volts(0) <= 0) {
            return curve.amperesAt(0);
        }
        int near = (int) IntStream.range(0, curve.size())
                .filter(i -> curve.volts(i) <= NEAR * openCircuit)
                .count();
        int points = Math.max(2, near);
        remarks.add(Phrase.of("judged.sweep.short-circuit-by-line", String.valueOf(points)));
        return Line.through(curve, IntStream.range(0, points)).atZero();
    }

    /** @throws Unusable if the sweep begins too far above short circuit to tell of it */
    static void nearShortCircuit(Curve curve) {
        double reach = curve.volts(curve.size() - 1);
        if (curve.volts(0) > NEAR * reach) {
            throw new Unusable(
                    Phrase.of("judged.sweep.no-short-circuit", String.valueOf(curve.volts(0))),
                    Phrase.of("judged.sweep.no-short-circuit.remedy"));
        }
    }
}
