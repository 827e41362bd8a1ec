package dev.sunthread.electrical.terms;

import dev.sunthread.kernel.verdict.Phrase;
import java.util.function.ToDoubleFunction;

/** What can be limited of a test of insulation or of the path to ground. */
public enum SafetyQuantity implements Quantity<SafetyReading> {
    INSULATION_RESISTANCE(false, "judged.safety.insulation", "Mohm", reading -> reading.ohms() / 1e6),
    LEAKAGE(false, "judged.safety.leakage", "uA", reading -> Math.abs(reading.amperes()) * 1e6),
    GROUND_RESISTANCE(true, "judged.safety.ground", "ohm", SafetyReading::ohms);

    private final boolean ground;
    private final String code;
    private final String unit;
    private final ToDoubleFunction<SafetyReading> value;

    SafetyQuantity(boolean ground, String code, String unit, ToDoubleFunction<SafetyReading> value) {
        this.ground = ground;
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

    boolean isReadBy(SafetyReading reading) {
        return reading.ground() == ground;
    }

    @Override
    public double of(SafetyReading reading) {
        return value.applyAsDouble(reading);
    }

    /** What drives the test: volts over insulation, amperes through the path to ground. */
    double applied(SafetyReading reading) {
        return Math.abs(ground ? reading.amperes() : reading.volts());
    }

    String appliedUnit() {
        return ground ? "A" : "V";
    }
}
