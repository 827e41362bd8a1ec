package dev.sunthread.electrical.terms;

import dev.sunthread.electrical.translate.Conditions;
import org.jspecify.annotations.Nullable;

/**
 * The raw points of one sweep.
 *
 * @param conditions under what it was measured; absent if that is not recorded, or in the dark
 * @param dark whether it was measured without light
 */
public record Swept(String name, @Nullable Conditions conditions, boolean dark, double[] volts, double[] amperes) {

    /** A sweep under light. */
    public Swept(String name, @Nullable Conditions conditions, double[] volts, double[] amperes) {
        this(name, conditions, false, volts, amperes);
    }
}
