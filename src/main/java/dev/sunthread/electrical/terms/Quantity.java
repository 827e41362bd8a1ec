package dev.sunthread.electrical.terms;

import dev.sunthread.kernel.verdict.Criterion;
import dev.sunthread.kernel.verdict.Limits;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Span;
import java.util.List;

/**
 * What can be limited of something measured.
 *
 * @param <T> what it is a value of
 */
interface Quantity<T> {

    /** What it is, as a sentence begins. */
    Phrase named();

    String unit();

    double of(T measured);

    /** Whether all values that the error leaves possible keep the limits; at least one is given. */
    default Criterion within(Limits limits, List<T> possible) {
        Span value = possible.stream()
                .map(one -> Span.exactly(of(one)))
                .reduce(Span::hull)
                .orElseThrow();
        return Criterion.of(named(), value, unit(), limits);
    }

    /** That there is no value to hold against the limits. */
    default Criterion missing(Limits limits, Phrase why) {
        return Criterion.missing(named(), unit(), limits, why);
    }
}
