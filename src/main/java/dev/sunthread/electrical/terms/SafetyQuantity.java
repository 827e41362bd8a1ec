package dev.sunthread.electrical.terms;

import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Span;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.function.Function;

/** What can be limited of a test of insulation or of the path to ground. */
public enum SafetyQuantity implements Quantity<SafetyReading> {
    INSULATION_RESISTANCE(
            false, "judged.safety.insulation", "Mohm", reading -> ohms(reading).scaleByPowerOfTen(-6)),
    LEAKAGE(
            false,
            "judged.safety.leakage",
            "uA",
            reading -> reading.amperes().abs().scaleByPowerOfTen(6)),
    GROUND_RESISTANCE(true, "judged.safety.ground", "ohm", SafetyQuantity::ohms);

    private final boolean ground;
    private final String code;
    private final String unit;
    private final Function<SafetyReading, BigDecimal> value;

    SafetyQuantity(boolean ground, String code, String unit, Function<SafetyReading, BigDecimal> value) {
        this.ground = ground;
        this.code = code;
        this.unit = unit;
        this.value = value;
    }

    private static BigDecimal ohms(SafetyReading reading) {
        return reading.volts().divide(reading.amperes(), MathContext.DECIMAL128).abs();
    }

    @Override
    public Phrase named() {
        return Phrase.of(code);
    }

    @Override
    public String unit() {
        return unit;
    }

    boolean isReadBy(SafetyReading reading) {
        return reading.ground() == ground;
    }

    @Override
    public Span of(SafetyReading reading) {
        return Span.exactly(value.apply(reading).doubleValue());
    }

    /** What drives the test: volts over insulation, amperes through the path to ground. */
    BigDecimal applied(SafetyReading reading) {
        return (ground ? reading.amperes() : reading.volts()).abs();
    }

    String appliedUnit() {
        return ground ? "A" : "V";
    }
}
