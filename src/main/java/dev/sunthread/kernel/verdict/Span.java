package dev.sunthread.kernel.verdict;

/**
 * Between which values something lies, both included: a single value where it is known exactly, infinite where nothing
 * bounds it.
 */
public record Span(double low, double high) {

    /** @throws IllegalArgumentException if an end is no number, or the low end lies above the high one */
    public Span {
        if (Double.isNaN(low) || Double.isNaN(high) || low > high) {
            throw new IllegalArgumentException("no value lies from " + low + " to " + high);
        }
    }

    public static Span exactly(double value) {
        return new Span(value, value);
    }

    /** The span between two values, whichever is the lower. */
    public static Span between(double one, double other) {
        return new Span(Math.min(one, other), Math.max(one, other));
    }

    public boolean isExact() {
        return low == high;
    }

    public Span plus(Span other) {
        return new Span(low + other.low, high + other.high);
    }

    /** The values scaled by a factor that is not negative. */
    public Span times(double factor) {
        return new Span(low * factor, high * factor);
    }

    /** The lower of two values. */
    public Span lowest(Span other) {
        return new Span(Math.min(low, other.low), Math.min(high, other.high));
    }

    /** The higher of two values. */
    public Span highest(Span other) {
        return new Span(Math.max(low, other.low), Math.max(high, other.high));
    }

    /** The least span with the values of both. */
    public Span hull(Span other) {
        return new Span(Math.min(low, other.low), Math.max(high, other.high));
    }

    /** For a place of a phrase, or a cell of a table. */
    public Object said() {
        return isExact() ? Digit.said(low) : Phrase.of("judged.span", Digit.said(low), Digit.said(high));
    }

    /** In plain digits, such as "12.5" or "12 to 13.5". */
    @Override
    public String toString() {
        return said().toString();
    }
}
