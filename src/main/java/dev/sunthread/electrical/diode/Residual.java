package dev.sunthread.electrical.diode;

import dev.sunthread.kernel.verdict.Phrase;

/** What a fit makes small; the two give different parameters, so which one is kept with them. */
public enum Residual {
    /** The current of the model at each voltage less the measured one. */
    MODEL_CURRENT("judged.diode.by-model-current"),
    /** What is left of the model's equation with the measured current on both sides, as most publications have it. */
    IMPLICIT("judged.diode.by-implicit");

    private final String code;

    Residual(String code) {
        this.code = code;
    }

    public Phrase words() {
        return Phrase.of(code);
    }
}
