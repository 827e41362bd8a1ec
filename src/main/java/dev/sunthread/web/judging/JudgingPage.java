package dev.sunthread.web.judging;

import dev.sunthread.catalog.judging.JudgedAgain;
import dev.sunthread.web.Paged;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the page of runs judged again shows.
 *
 * @param of cure or test
 * @param before the verdict before that lines are limited to; absent for any
 * @param after the verdict after that lines are limited to; absent for any
 */
public record JudgingPage(
        String of,
        JudgedAgain job,
        List<JudgedAgain.Change> changes,
        List<Traced> traced,
        Paged<JudgedAgain.Line> lines,
        @Nullable String before,
        @Nullable String after) {

    /** An outcome with the scope that traces it. */
    public record Traced(String outcome, String scope) {}
}
