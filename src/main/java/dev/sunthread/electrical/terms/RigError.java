package dev.sunthread.electrical.terms;

import dev.sunthread.electrical.curve.Curve;
import dev.sunthread.kernel.verdict.Span;
import java.util.List;
import java.util.stream.Stream;

/**
 * By what part of the truth a rig read too much, as far as that is known: 0.026 for 2.6 % too much. It was found at one
 * moment and may have come at any before, so it lies from nought to what was found.
 */
public record RigError(Span current, Span voltage) {

    public static final RigError NONE = new RigError(Span.exactly(0), Span.exactly(0));

    /** @throws IllegalArgumentException if nothing of the truth would be left */
    public RigError {
        if (current.low() <= -1 || voltage.low() <= -1) {
            throw new IllegalArgumentException("a rig can't read less than nothing");
        }
    }

    public boolean isNone() {
        return equals(NONE);
    }

    /** The curve as it may truly have been, by every end of the errors. */
    List<Curve> corrected(Curve read) {
        return ends(current)
                .flatMap(i -> ends(voltage).map(v -> isNone() ? read : corrected(read, v, i)))
                .toList();
    }

    private static Curve corrected(Curve read, double volts, double amperes) {
        return read.moved(point -> new Curve.Point(point.volts() / (1 + volts), point.amperes() / (1 + amperes)));
    }

    private static Stream<Double> ends(Span span) {
        return span.isExact() ? Stream.of(span.low()) : Stream.of(span.low(), span.high());
    }
}
