package dev.sunthread.electrical.diode;

/** What a fit makes small; the two give different parameters, so which one is kept with them. */
public enum Residual {
    /** The current of the model at each voltage less the measured one. */
    MODEL_CURRENT("model current less measured current"),
    /** What is left of the model's equation with the measured current on both sides, as most publications have it. */
    IMPLICIT("implicit residual, with the measured current on both sides");

    private final String words;

    Residual(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
