package dev.sunthread.station;

import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.RuleBroken;
import dev.sunthread.ledger.RaisedFinding;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A sentence as a key of the module's messages and what goes into it. One that comes in words has the key {@code said};
 * behind the words of a rule stands the rule's name.
 */
public record Say(String key, List<String> with) {

    public Say {
        with = List.copyOf(with);
    }

    public static Say of(String key, Object... with) {
        return new Say(key, Arrays.stream(with).map(String::valueOf).toList());
    }

    /** A sentence that comes in words. */
    public static Say words(String sentence) {
        return of("said", sentence);
    }

    /** Why something is not done, with the rule that forbids it if one does. */
    static Say why(Refused refused) {
        return refused instanceof RuleBroken broken
                ? of("said", broken.reason(), broken.rule())
                : words(refused.reason());
    }

    /** A finding beside what was done. */
    static Say noted(RaisedFinding finding) {
        return of("noted", finding.sentence(), finding.rule());
    }

    /** The rule that the sentence tells of; absent if it tells of none. */
    public @Nullable String rule() {
        return (key.equals("said") || key.equals("noted")) && with.size() > 1 ? with.get(1) : null;
    }
}
