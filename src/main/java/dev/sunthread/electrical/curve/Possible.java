package dev.sunthread.electrical.curve;

import dev.sunthread.kernel.verdict.Digit;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Span;
import dev.sunthread.kernel.verdict.Unusable;
import java.util.stream.IntStream;

/** Whether a curve under light can be one at all; nothing is judged by one that can't. */
public final class Possible {

    /** By what part of the largest current light may flicker while a curve is swept. */
    private static final double FLICKER = 0.02;

    private Possible() {}

    /** @throws Unusable if no cell has such a curve, or the method found what the points do not allow */
    public static void check(Curve curve, CurveNumbers numbers) {
        currentNeverRises(curve);
        if (curve.volts(curve.size() - 1) <= 0) {
            throw impossible("judged.sweep.no-positive-voltage");
        }
        Span allowed = new CurveSpans(curve).power();
        double watts = numbers.power().watts();
        if (!(watts > 0) || watts < allowed.low() * (1 - FLICKER) || watts > allowed.high()) {
            throw impossible("judged.sweep.power-not-allowed", Digit.plain(watts), allowed.said());
        }
        powerFillsNoMoreThanAll(numbers, watts);
    }

    private static void powerFillsNoMoreThanAll(CurveNumbers numbers, double watts) {
        double most;
        try {
            most = numbers.shortCircuit() * numbers.openCircuit();
        } catch (Unusable oneIsNotTold) {
            return;
        }
        if (!(watts <= most)) {
            throw impossible("judged.sweep.too-full", Digit.plain(watts), Digit.plain(most));
        }
    }

    /** A point that was dropped, or a second place without current, makes the current rise behind it. */
    static void currentNeverRises(Curve curve) {
        double flicker = FLICKER
                * IntStream.range(0, curve.size())
                        .mapToDouble(i -> Math.abs(curve.amperes(i)))
                        .max()
                        .orElseThrow();
        int lowest = 0;
        for (int i = 1; i < curve.size(); i++) {
            double rise = curve.amperes(i) - curve.bound(i) - curve.amperes(lowest) - curve.bound(lowest);
            if (!(rise <= flicker)) {
                throw impossible(
                        "judged.sweep.rises",
                        Digit.plain(curve.amperes(lowest)),
                        Digit.plain(curve.volts(lowest)),
                        Digit.plain(curve.amperes(i)),
                        Digit.plain(curve.volts(i)));
            }
            boolean lower = curve.amperes(i) + curve.bound(i) < curve.amperes(lowest) + curve.bound(lowest);
            lowest = lower ? i : lowest;
        }
    }

    private static Unusable impossible(String code, Object... places) {
        return new Unusable(Phrase.of(code, places), Phrase.of("judged.sweep.impossible.remedy"));
    }
}
