package dev.sunthread.electrical.terms;

import dev.sunthread.electrical.curve.DarkCurve;
import dev.sunthread.kernel.verdict.Phrase;
import java.util.function.ToDoubleFunction;

/** What can be limited of a curve without light. */
public enum DarkQuantity implements Quantity<DarkCurve> {
    FORWARD_VOLTAGE("judged.dark.forward", "V", DarkCurve::forward),
    SHUNT_SLOPE("judged.dark.shunt-slope", "ohm", DarkCurve::shunt),
    SERIES_SLOPE("judged.dark.series-slope", "ohm", DarkCurve::series);

    private final String code;
    private final String unit;
    private final ToDoubleFunction<DarkCurve> value;

    DarkQuantity(String code, String unit, ToDoubleFunction<DarkCurve> value) {
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
    public double of(DarkCurve curve) {
        return value.applyAsDouble(curve);
    }
}
