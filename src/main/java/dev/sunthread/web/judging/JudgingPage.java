package dev.sunthread.web.judging;

import dev.sunthread.catalog.judging.JudgedAgain;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.web.Paged;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the page of runs judged again shows.
 *
 * @param of cure or test
 * @param words what was asked
 * @param before the verdict before that lines are limited to; absent for any
 * @param after the verdict after that lines are limited to; absent for any
 */
public record JudgingPage(
        String of,
        JudgedAgain job,
        List<Phrase> words,
        List<JudgedAgain.Change> changes,
        List<Traced> traced,
        Paged<JudgedAgain.Line> lines,
        @Nullable String before,
        @Nullable String after) {

    /** A job in a list, with what was asked. */
    public record Listed(JudgedAgain job, List<Phrase> words) {

        static Listed of(JudgedAgain job) {
            return new Listed(job, JudgingWords.of(job));
        }
    }

    /** An outcome with the scope that traces it. */
    public record Traced(String outcome, String scope) {}
}
