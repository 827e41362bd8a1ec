package dev.sunthread.catalog.judging;

import dev.sunthread.kernel.verdict.Phrase;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * Runs judged again.
 *
 * @param asked the question as JSON
 * @param cutoff the ledger position up to which records count
 * @param total how many runs it selects
 * @param done how many of them are judged
 * @param state running, done or failed
 */
public record JudgedAgain(
        long id,
        String asked,
        OffsetDateTime askedAt,
        long cutoff,
        int total,
        int done,
        String state,
        @Nullable String problem) {

    public boolean isRunning() {
        return state.equals("running");
    }

    /** Both verdicts of one run, in words, each with why. */
    public record Line(
            String run,
            @Nullable String unit,
            String equipment,
            OffsetDateTime at,
            String before,
            String after,
            Phrase whyBefore,
            Phrase whyAfter) {}

    /** How many runs went from one verdict to another. */
    public record Change(String before, String after, long runs, long units) {}
}
