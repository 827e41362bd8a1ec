package dev.sunthread.kernel.verdict;

import org.jspecify.annotations.Nullable;

/**
 * One value against its limits.
 *
 * @param name what was measured, as a sentence begins
 * @param value between which values it lies; absent if it could not be computed
 * @param unit empty for a plain number
 * @param sentence what came out and why
 */
public record Criterion(
        Phrase name, @Nullable Span value, String unit, Limits limits, Outcome outcome, Phrase sentence) {

    /** A value judged by its limits. */
    public static Criterion of(Phrase name, Span value, String unit, Limits limits) {
        Outcome outcome = limits.judge(value);
        return new Criterion(name, value, unit, limits, outcome, sentence(name, value, unit, limits, outcome));
    }

    /** A value that could not be computed. */
    public static Criterion missing(Phrase name, String unit, Limits limits, Phrase why) {
        Phrase sentence = Phrase.of("judged.value.unknown", name, why, limits.words(unit));
        return new Criterion(name, null, unit, limits, Outcome.NOT_PROVEN, sentence);
    }

    /** Something that is wrong with what was measured, so that nothing can be accepted on it. */
    public static Criterion flaw(Phrase name, Phrase why) {
        return new Criterion(
                name, null, "", new Limits(null, null, 0), Outcome.NOT_PROVEN, Phrase.of("judged.flaw", name, why));
    }

    private static Phrase sentence(Phrase name, Span value, String unit, Limits limits, Outcome outcome) {
        Object told = Digit.with(value.said(), unit);
        Phrase demanded = limits.words(unit);
        return switch (outcome) {
            case PASSED -> Phrase.of("judged.value.passed", name, told, demanded);
            case FAILED -> Phrase.of("judged.value.failed", name, told, demanded);
            case NOT_PROVEN ->
                limits.margin(value) < 0
                        ? Phrase.of("judged.value.maybe-outside", name, told, demanded)
                        : Phrase.of(
                                "judged.value.guarded",
                                name,
                                told,
                                demanded,
                                Digit.with(Digit.said(limits.guard()), unit));
        };
    }
}
