package dev.sunthread.cure.recipe;

import dev.sunthread.kernel.verdict.Span;
import java.util.Collection;

/**
 * What a cure did to the material, added up when there are several.
 *
 * @param minutes time within the window
 * @param equivalentMinutes at the recipe's reference temperature
 * @param dose in mJ/cm2
 * @param peak the hottest it became, in degrees Celsius
 */
public record Effect(Span minutes, Span equivalentMinutes, Span dose, Span peak) {

    private static final Span NOUGHT = Span.exactly(0);

    /** No cure at all. */
    public static final Effect NONE = new Effect(NOUGHT, NOUGHT, NOUGHT, Span.exactly(Double.NEGATIVE_INFINITY));

    static Effect ofDose(Span dose) {
        return new Effect(NOUGHT, NOUGHT, dose, NONE.peak);
    }

    static Effect ofMinutes(Span minutes) {
        return new Effect(minutes, NOUGHT, NOUGHT, NONE.peak);
    }

    /** Times and doses add; the highest peak stays. */
    public static Effect of(Collection<Effect> cures) {
        return cures.stream().reduce(NONE, Effect::and);
    }

    private Effect and(Effect next) {
        Span hottest = new Span(Math.max(peak.low(), next.peak.low()), Math.max(peak.high(), next.peak.high()));
        return new Effect(
                minutes.plus(next.minutes),
                equivalentMinutes.plus(next.equivalentMinutes),
                dose.plus(next.dose),
                hottest);
    }
}
