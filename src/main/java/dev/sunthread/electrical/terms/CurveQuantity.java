package dev.sunthread.electrical.terms;

import dev.sunthread.electrical.curve.BypassSteps;
import dev.sunthread.electrical.diode.DiodeFit;
import dev.sunthread.electrical.diode.Residual;
import dev.sunthread.kernel.verdict.Phrase;
import java.util.function.ToDoubleFunction;

/** What can be limited of a curve under light. */
public enum CurveQuantity implements Quantity<CurveTerms.Seen> {
    SHORT_CIRCUIT_CURRENT("judged.curve.isc", "A", seen -> seen.numbers().shortCircuit()),
    OPEN_CIRCUIT_VOLTAGE("judged.curve.voc", "V", seen -> seen.numbers().openCircuit()),
    MAXIMUM_POWER("judged.curve.pmax", "W", seen -> seen.numbers().power().watts()),
    FILL_FACTOR("judged.curve.ff", "", seen -> seen.numbers().fillFactor()),
    SHUNT_SLOPE("judged.curve.shunt-slope", "ohm", seen -> seen.numbers().shunt()),
    SERIES_SLOPE("judged.curve.series-slope", "ohm", seen -> seen.numbers().series()),
    /** Steps deeper than 2 % of the short-circuit current. */
    BYPASS_STEPS(
            "judged.curve.steps",
            "",
            seen -> BypassSteps.of(seen.curve(), seen.numbers().shortCircuit(), 0.02)
                    .size()),
    MODEL_SERIES(
            "judged.curve.model-series",
            "ohm",
            seen -> DiodeFit.of(seen.curve(), Residual.MODEL_CURRENT).diode().series()),
    MODEL_SHUNT(
            "judged.curve.model-shunt",
            "ohm",
            seen -> DiodeFit.of(seen.curve(), Residual.MODEL_CURRENT).diode().shunt());

    private final String code;
    private final String unit;
    private final ToDoubleFunction<CurveTerms.Seen> value;

    CurveQuantity(String code, String unit, ToDoubleFunction<CurveTerms.Seen> value) {
        this.code = code;
        this.unit = unit;
        this.value = value;
    }

    @Override
    public Phrase named() {
        return Phrase.of(code);
    }

    @Override
    public String unit() {
        return unit;
    }

    @Override
    public double of(CurveTerms.Seen seen) {
        return value.applyAsDouble(seen);
    }
}
