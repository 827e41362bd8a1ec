package dev.sunthread.kernel.verdict;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * From what value on to what value something is good, both included; open where a side is absent.
 *
 * @param guard how far inside the limits a value must lie to be accepted, never negative: a value within the limits
 *     but nearer to one is not proven
 */
public record Limits(@Nullable Double least, @Nullable Double most, double guard) {

    /** @throws IllegalArgumentException if nothing can lie within, or the guard band is negative */
    public Limits {
        if (guard < 0 || (least != null && most != null && least > most)) {
            throw new IllegalArgumentException("no value lies from " + least + " to " + most + ", guarded by " + guard);
        }
    }

    public static Limits atLeast(double least) {
        return new Limits(least, null, 0);
    }

    public static Limits atMost(double most) {
        return new Limits(null, most, 0);
    }

    public static Limits between(double least, double most) {
        return new Limits(least, most, 0);
    }

    /** The lower limit alone. */
    public Limits lower() {
        return new Limits(least, null, guard);
    }

    /** The upper limit alone. */
    public Limits upper() {
        return new Limits(null, most, guard);
    }

    /** Passed if all of the span is accepted, failed if all of it lies outside on one side, else not proven. */
    public Outcome judge(Span value) {
        if (margin(value.high(), value.low()) < 0) {
            return Outcome.FAILED;
        }
        return margin(value.low(), value.high()) >= guard ? Outcome.PASSED : Outcome.NOT_PROVEN;
    }

    /** How far all of the span lies inside both limits; negative by how far some of it lies outside. */
    public double margin(Span value) {
        return margin(value.low(), value.high());
    }

    private double margin(double low, double high) {
        double below = least == null ? Double.POSITIVE_INFINITY : difference(low, least);
        double above = most == null ? Double.POSITIVE_INFINITY : difference(most, high);
        return Math.min(below, above);
    }

    /** As the decimals that people write: 0.3 less 0.1 is 0.2. */
    private static double difference(double one, double other) {
        return Double.isInfinite(one) || Double.isInfinite(other)
                ? one - other
                : BigDecimal.valueOf(one).subtract(BigDecimal.valueOf(other)).doubleValue();
    }

    /** In words, such as "at least 55 min". */
    public Phrase words(String unit) {
        if (least == null) {
            return most == null
                    ? Phrase.of("judged.limits.any")
                    : Phrase.of("judged.limits.most", Digit.with(Digit.said(most), unit));
        }
        return most == null
                ? Phrase.of("judged.limits.least", Digit.with(Digit.said(least), unit))
                : Phrase.of("judged.limits.both", Digit.said(least), Digit.with(Digit.said(most), unit));
    }
}
