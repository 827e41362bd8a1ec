package dev.sunthread.cure.profile;

import dev.sunthread.kernel.verdict.Span;

/** A line from one reading to the next. */
public record Segment(double start, double first, double end, double last) {

    public double seconds() {
        return end - start;
    }

    /** How long the line lies in the band, in seconds. */
    public double secondsWithin(Span band) {
        Span crossed = within(band);
        return crossed.high() - crossed.low();
    }

    /** From when to when the line lies in the band; an empty span at its start if never. */
    public Span within(Span band) {
        if (first == last) {
            return first >= band.low() && first <= band.high() ? new Span(start, end) : Span.exactly(start);
        }
        double one = when(band.low());
        double other = when(band.high());
        double from = Math.max(start, Math.min(one, other));
        double to = Math.min(end, Math.max(one, other));
        return from < to ? new Span(from, to) : Span.exactly(start);
    }

    private double when(double value) {
        return start + (value - first) / (last - first) * seconds();
    }

    /** The part of the line between two instants that lie in it. */
    public Segment part(double from, double to) {
        return new Segment(from, at(from), to, at(to));
    }

    public double at(double second) {
        return seconds() == 0 ? first : first + (second - start) / seconds() * (last - first);
    }
}
