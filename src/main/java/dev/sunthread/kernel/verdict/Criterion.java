package dev.sunthread.kernel.verdict;

import org.jspecify.annotations.Nullable;

/**
 * One value against its limits.
 *
 * @param name what was measured, as a sentence begins
 * @param value between which values it lies; absent if it could not be computed
 * @param sentence what came out and why
 */
public record Criterion(
        String name, @Nullable Span value, String unit, Limits limits, Outcome outcome, String sentence) {

    /** A value judged by its limits. */
    public static Criterion of(String name, Span value, String unit, Limits limits) {
        Outcome outcome = limits.judge(value);
        return new Criterion(name, value, unit, limits, outcome, sentence(name, value, unit, limits, outcome));
    }

    /** A value that could not be computed. */
    public static Criterion missing(String name, String unit, Limits limits, String why) {
        String sentence = name + " is not known: " + why + "; demanded is " + limits.words(unit);
        return new Criterion(name, null, unit, limits, Outcome.NOT_PROVEN, sentence);
    }

    /** Something that is wrong with what was measured, so that nothing can be accepted on it. */
    public static Criterion flaw(String name, String why) {
        return new Criterion(name, null, "", new Limits(null, null, 0), Outcome.NOT_PROVEN, name + ": " + why);
    }

    private static String sentence(String name, Span value, String unit, Limits limits, Outcome outcome) {
        String told = name + " is " + value + " " + unit + ", ";
        String demanded = limits.words(unit) + " demanded";
        return switch (outcome) {
            case PASSED -> told + "as " + demanded;
            case FAILED -> told + "but " + demanded;
            case NOT_PROVEN -> told + why(value, unit, limits) + ": " + demanded;
        };
    }

    private static String why(Span value, String unit, Limits limits) {
        return limits.margin(value) < 0
                ? "so it may lie outside of its limits"
                : "nearer to a limit than the guard band of " + Digit.plain(limits.guard()) + " " + unit + " allows";
    }
}
