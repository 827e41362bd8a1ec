package dev.sunthread.electrical.curve;

import dev.sunthread.kernel.verdict.Digit;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Unusable;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * What a curve without light says: forward current counts as positive.
 *
 * @param shunt the resistance of the slope through the points around no voltage, in ohms
 * @param forward the voltage at a stated current, in volts
 * @param series the resistance of the slope at the highest currents, in ohms; the diode has a part in it
 */
public record DarkCurve(double shunt, double forward, double series) {

    /**
     * Reads a dark curve.
     *
     * @param at the current at which the forward voltage is wanted, in amperes
     * @param points how many points make a slope
     * @throws Unusable if the sweep does not reach that current
     */
    public static DarkCurve of(Curve curve, double at, int points) {
        int size = curve.size();
        int most = Math.min(points, size);
        IntStream nearest = IntStream.range(0, size)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> Math.abs(curve.volts(i))))
                .limit(most)
                .mapToInt(i -> i);
        Line flat = Line.through(curve, nearest);
        Line steep = Line.through(curve, IntStream.range(size - most, size));
        return new DarkCurve(resistance(flat), forward(curve, at), resistance(steep));
    }

    private static double resistance(Line line) {
        return line.slope() == 0 ? Double.POSITIVE_INFINITY : 1 / line.slope();
    }

    static double forward(Curve curve, double at) {
        for (int i = 1; i < curve.size(); i++) {
            double before = curve.amperes(i - 1);
            double behind = curve.amperes(i);
            if (before < at && behind >= at) {
                return curve.volts(i - 1) + (at - before) / (behind - before) * (curve.volts(i) - curve.volts(i - 1));
            }
        }
        throw new Unusable(
                Phrase.of("judged.dark.never-reaches", Digit.plain(at)), Phrase.of("judged.dark.never-reaches.remedy"));
    }
}
