package dev.sunthread.electrical.curve;

import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Unusable;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** What a curve under light says by itself, each number apart: where one can't be told, the others still can. */
public final class CurveNumbers {

    private final Curve curve;
    private final CurveMethod method;

    private CurveNumbers(Curve curve, CurveMethod method) {
        this.curve = curve;
        this.method = method;
    }

    public static CurveNumbers of(Curve curve, CurveMethod method) {
        return new CurveNumbers(curve, method);
    }

    /** The current at no voltage, in amperes. @throws Unusable if no point is near enough */
    public double shortCircuit() {
        return Ends.shortCircuit(curve, reach(), new ArrayList<>());
    }

    private double reach() {
        try {
            return openCircuit();
        } catch (Unusable endsBefore) {
            return curve.volts(curve.size() - 1);
        }
    }

    /** The voltage at no current, in volts. @throws Unusable if the sweep ends before */
    public double openCircuit() {
        return Ends.openCircuit(curve);
    }

    public MaximumPower power() {
        return method.power().of(curve);
    }

    /** The resistance of the slope at the lowest voltages, in ohms. */
    public double shunt() {
        return Line.through(curve, IntStream.range(0, Math.min(curve.size(), method.shuntPoints())))
                .ohms();
    }

    /** The resistance of the slope at open circuit, in ohms; the diode has a part in it. */
    public double series() {
        int size = curve.size();
        return Line.through(curve, IntStream.range(Math.max(0, size - method.seriesPoints()), size))
                .ohms();
    }

    /** The maximum power as a part of the product of short-circuit current and open-circuit voltage. */
    public double fillFactor() {
        return power().watts() / (shortCircuit() * openCircuit());
    }

    /** What was odd or had to be assumed, in words. */
    public List<Phrase> remarks() {
        List<Phrase> remarks = new ArrayList<>(curve.remarks());
        try {
            Ends.shortCircuit(curve, reach(), remarks);
        } catch (Unusable unknown) {
            return remarks;
        }
        return remarks;
    }
}
