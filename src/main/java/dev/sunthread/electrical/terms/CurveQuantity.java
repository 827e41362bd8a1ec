package dev.sunthread.electrical.terms;

import dev.sunthread.electrical.curve.BypassSteps;
import dev.sunthread.electrical.diode.DiodeFit;
import dev.sunthread.electrical.diode.Residual;
import java.util.function.ToDoubleFunction;

/** What can be limited of a curve under light. */
public enum CurveQuantity {
    SHORT_CIRCUIT_CURRENT("Short-circuit current", "A", seen -> seen.numbers().shortCircuit()),
    OPEN_CIRCUIT_VOLTAGE("Open-circuit voltage", "V", seen -> seen.numbers().openCircuit()),
    MAXIMUM_POWER("Maximum power", "W", seen -> seen.numbers().power().watts()),
    FILL_FACTOR("Fill factor", "of 1", seen -> seen.numbers().fillFactor()),
    SHUNT_SLOPE(
            "Slope resistance at short circuit", "ohm", seen -> seen.numbers().shunt()),
    SERIES_SLOPE(
            "Slope resistance at open circuit", "ohm", seen -> seen.numbers().series()),
    /** Steps deeper than 2 % of the short-circuit current. */
    BYPASS_STEPS(
            "Steps of bypass diodes",
            "steps",
            seen -> BypassSteps.of(seen.curve(), seen.numbers().shortCircuit(), 0.02)
                    .size()),
    MODEL_SERIES(
            "Series resistance of the one-diode model",
            "ohm",
            seen -> DiodeFit.of(seen.curve(), Residual.MODEL_CURRENT).diode().series()),
    MODEL_SHUNT(
            "Shunt resistance of the one-diode model",
            "ohm",
            seen -> DiodeFit.of(seen.curve(), Residual.MODEL_CURRENT).diode().shunt());

    private final String named;
    private final String unit;
    private final ToDoubleFunction<CurveTerms.Seen> value;

    CurveQuantity(String named, String unit, ToDoubleFunction<CurveTerms.Seen> value) {
        this.named = named;
        this.unit = unit;
        this.value = value;
    }

    public String named() {
        return named;
    }

    public String unit() {
        return unit;
    }

    public double of(CurveTerms.Seen seen) {
        return value.applyAsDouble(seen);
    }
}
