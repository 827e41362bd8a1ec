package dev.sunthread.electrical.terms;

import dev.sunthread.electrical.curve.BypassSteps;
import dev.sunthread.electrical.diode.DiodeFit;
import dev.sunthread.electrical.diode.Residual;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Span;
import java.util.function.Function;

/** What can be limited of a curve under light. */
public enum CurveQuantity implements Quantity<CurveTerms.Seen> {
    SHORT_CIRCUIT_CURRENT("judged.curve.isc", "A", seen -> seen.spans().shortCircuit()),
    OPEN_CIRCUIT_VOLTAGE("judged.curve.voc", "V", seen -> seen.spans().openCircuit()),
    MAXIMUM_POWER("judged.curve.pmax", "W", seen -> seen.spans().power()),
    FILL_FACTOR("judged.curve.ff", "", seen -> seen.spans().fillFactor()),
    SHUNT_SLOPE("judged.curve.shunt-slope", "ohm", seen -> seen.spans().shunt()),
    SERIES_SLOPE("judged.curve.series-slope", "ohm", seen -> seen.spans().series()),
    /** Steps deeper than 2 % of the short-circuit current. */
    BYPASS_STEPS(
            "judged.curve.steps",
            "",
            seen -> Span.exactly(BypassSteps.of(seen.curve(), seen.numbers().shortCircuit(), 0.02)
                    .size())),
    MODEL_SERIES(
            "judged.curve.model-series",
            "ohm",
            seen -> DiodeFit.of(seen.curve(), Residual.MODEL_CURRENT).series()),
    MODEL_SHUNT(
            "judged.curve.model-shunt",
            "ohm",
            seen -> DiodeFit.of(seen.curve(), Residual.MODEL_CURRENT).shunt());

    private final String code;
    private final String unit;
    private final Function<CurveTerms.Seen, Span> value;

    CurveQuantity(String code, String unit, Function<CurveTerms.Seen, Span> value) {
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
    public Span of(CurveTerms.Seen seen) {
        return value.apply(seen);
    }
}
