package dev.sunthread.station;

import dev.sunthread.station.pass.Passing;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is said of one scan.
 *
 * @param said what came of it, and why
 * @param remedy what to do about it; absent where nothing is wrong
 * @param choices where it may mean several things: a text to scan instead, and what that means
 * @param passing what somebody can sign to have it done after all; absent where nobody may
 */
public record Verdict(
        Outcome outcome,
        Say said,
        @Nullable Say remedy,
        List<Choice> choices,
        @Nullable Passing passing) {

    /** What came of a scan. */
    public enum Outcome {
        /** It was recorded, or taken in hand. */
        ACCEPTED,
        /** It was recorded, with something that a person has to settle. */
        NOTED,
        /** Nothing was recorded. */
        REFUSED,
        /** A person has to choose. */
        ASKED
    }

    /** One thing that a scan may mean: what to scan to say so. */
    public record Choice(String text, Say said) {}

    public Verdict {
        choices = List.copyOf(choices);
    }

    public static Verdict accepted(Say said) {
        return new Verdict(Outcome.ACCEPTED, said, null, List.of(), null);
    }

    /** Taken in hand; what comes next may be one of these choices, or be scanned. */
    public static Verdict accepted(Say said, List<Choice> choices) {
        return new Verdict(Outcome.ACCEPTED, said, null, choices, null);
    }

    public static Verdict noted(Say said, Say remedy) {
        return new Verdict(Outcome.NOTED, said, remedy, List.of(), null);
    }

    public static Verdict refused(Say said, Say remedy) {
        return new Verdict(Outcome.REFUSED, said, remedy, List.of(), null);
    }

    public static Verdict asked(Say said, List<Choice> choices) {
        return new Verdict(Outcome.ASKED, said, null, choices, null);
    }

    /** The same with what else there is to know, where nothing is to be mended. */
    public Verdict noting(Say noted) {
        return remedy == null ? new Verdict(outcome, said, noted, choices, passing) : this;
    }

    /** The same with what can be signed about it. */
    Verdict with(@Nullable Passing signed) {
        return new Verdict(outcome, said, remedy, choices, signed);
    }

    /** Whether something was recorded or taken in hand. */
    boolean isDone() {
        return outcome == Outcome.ACCEPTED || outcome == Outcome.NOTED;
    }
}
