package dev.sunthread.electrical.terms;

import dev.sunthread.kernel.verdict.Criterion;
import dev.sunthread.kernel.verdict.Limits;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Span;
import dev.sunthread.kernel.verdict.Unusable;
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

    /** Between which values it lies. @throws Unusable if it can't be told */
    Span of(T measured);

    /** Whether all values that the error leaves possible keep the limits; at least one is given. */
    default Criterion within(Limits limits, List<T> possible) {
        Span value = possible.stream().map(this::of).reduce(Span::hull).orElseThrow();
        return Criterion.of(named(), value, unit(), limits);
    }

    /** The same of a sweep, where this quantity alone may be what can't be told of it. */
    default Criterion ofSweep(String sweep, Limits limits, List<T> possible) {
        try {
            return within(limits, possible);
        } catch (Unusable unusable) {
            return missing(limits, Phrase.of("judged.sweep.unusable", sweep, unusable.why()));
        } catch (IllegalArgumentException | IllegalStateException | ArithmeticException beyondNumbers) {
            return missing(limits, Phrase.of("judged.beyond-numbers"));
        }
    }

    /** That there is no value to hold against the limits. */
    default Criterion missing(Limits limits, Phrase why) {
        return Criterion.missing(named(), unit(), limits, why);
    }
}
