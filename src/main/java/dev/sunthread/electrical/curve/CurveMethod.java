package dev.sunthread.electrical.curve;

import dev.sunthread.kernel.verdict.Phrase;

/**
 * How numbers are taken from a curve.
 *
 * @param shuntPoints how many points from the lowest voltage on give the slope at short circuit
 * @param seriesPoints how many points up to the highest voltage give the slope at open circuit
 */
public record CurveMethod(PowerMethod power, int shuntPoints, int seriesPoints) {

    /** Common practice: least squares over the points around the maximum, five points at the one end and four at the other. */
    public static final CurveMethod USUAL = new CurveMethod(PowerMethod.LEAST_SQUARES, 5, 4);

    /** @throws IllegalArgumentException if a line has fewer than two points */
    public CurveMethod {
        if (shuntPoints < 2 || seriesPoints < 2) {
            throw new IllegalArgumentException("a line needs two points");
        }
    }

    public Phrase words() {
        return Phrase.of(
                "judged.curve.method", power.words(), String.valueOf(shuntPoints), String.valueOf(seriesPoints));
    }
}
