package dev.sunthread.electrical.curve;

import dev.sunthread.kernel.verdict.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What a curve under light says by itself.
 *
 * @param shortCircuit the current at no voltage, in amperes
 * @param openCircuit the voltage at no current, in volts
 * @param shunt the resistance of the slope at the lowest voltages, in ohms
 * @param series the resistance of the slope at open circuit, in ohms; the diode has a part in it
 * @param remarks what was odd or had to be assumed, in words
 */
public record CurveNumbers(
        double shortCircuit,
        double openCircuit,
        MaximumPower power,
        double shunt,
        double series,
        List<Phrase> remarks) {

    /** @throws dev.sunthread.kernel.verdict.Unusable if the sweep does not reach from short circuit to open circuit */
    public static CurveNumbers of(Curve curve, CurveMethod method) {
        List<Phrase> remarks = new ArrayList<>(curve.remarks());
        double openCircuit = Ends.openCircuit(curve);
        double shortCircuit = Ends.shortCircuit(curve, openCircuit, remarks);
        int size = curve.size();
        Line flat = Line.through(curve, IntStream.range(0, Math.min(size, method.shuntPoints())));
        Line steep = Line.through(curve, IntStream.range(Math.max(0, size - method.seriesPoints()), size));
        return new CurveNumbers(
                shortCircuit, openCircuit, method.power().of(curve), flat.ohms(), steep.ohms(), remarks);
    }

    /** The maximum power as a part of the product of short-circuit current and open-circuit voltage. */
    public double fillFactor() {
        return power.watts() / (shortCircuit * openCircuit);
    }
}
