package dev.sunthread.web.equipment;

import dev.sunthread.kernel.verdict.Outcome;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was done with equipment from its last good check to a bad one, judged by the error that was found, under the
 * revision that was released last.
 *
 * @param at when it was found bad
 * @param from the last good check before; absent if there was none
 * @param kind cure run or test run
 * @param counts how many runs have which outcome, each with the scope that traces them
 */
public record Since(
        OffsetDateTime at,
        @Nullable OffsetDateTime from,
        String kind,
        String code,
        String revision,
        List<Count> counts) {

    /** How many runs have an outcome. */
    public record Count(Outcome outcome, int runs, String scope) {

        /** The outcome as pages word it. */
        public String word() {
            return outcome.words();
        }
    }
}
