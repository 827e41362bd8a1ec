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
        if (curve.volts(0) <= 0) {
            return curve.amperesAt(0);
        }
        int[] near = IntStream.range(0, curve.size())
                .filter(i -> curve.volts(i) <= NEAR * openCircuit)
                .toArray();
        if (near.length < 2) {
            throw new Unusable(
                    Phrase.of(
                            "judged.sweep.no-short-circuit",
                            String.valueOf(curve.volts(0)),
                            String.valueOf(near.length)),
                    Phrase.of("judged.sweep.no-short-circuit.remedy"));
        }
        remarks.add(Phrase.of("judged.sweep.short-circuit-by-line", String.valueOf(near.length)));
        return Line.through(curve, IntStream.of(near)).atZero();
    }
}
