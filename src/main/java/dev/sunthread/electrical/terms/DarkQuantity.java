package dev.sunthread.electrical.terms;

import dev.sunthread.electrical.curve.DarkSpans;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Span;
import java.util.function.Function;

/** What can be limited of a curve without light. */
public enum DarkQuantity implements Quantity<DarkSpans> {
    FORWARD_VOLTAGE("judged.dark.forward", "V", DarkSpans::forward),
    SHUNT_SLOPE("judged.dark.shunt-slope", "ohm", DarkSpans::shunt),
    SERIES_SLOPE("judged.dark.series-slope", "ohm", DarkSpans::series);

    private final String code;
    private final String unit;
    private final Function<DarkSpans, Span> value;

    DarkQuantity(String code, String unit, Function<DarkSpans, Span> value) {
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
    public Span of(DarkSpans curve) {
        return value.apply(curve);
    }
}
