package dev.sunthread.journal.raw;

import dev.sunthread.journal.LineOutcome;
import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What became of one file of raw data.
 *
 * @param reason why nothing more of it could be taken in; absent if all of it was read
 */
public record RawReport(
        String file,
        List<Run> runs,
        @Nullable String reason,
        @Nullable String remedy) implements Serializable {

    /**
     * What became of one run.
     *
     * @param entry the id it is recorded under, or kept in the inbox
     */
    public record Run(
            String run,
            String outcome,
            @Nullable String reason,
            @Nullable String remedy,
            @Nullable String entry) implements Serializable {

        static Run of(String run, LineOutcome line) {
            String outcome = line.outcome().name().toLowerCase(Locale.ROOT).replace('_', ' ');
            if (!line.problems().isEmpty()) {
                var problem = line.problems().get(0);
                return new Run(run, outcome, problem.field() + " " + problem.reason(), problem.remedy(), line.id());
            }
            if (!line.findings().isEmpty()) {
                var finding = line.findings().get(0);
                return new Run(run, outcome, finding.sentence(), finding.remedy(), line.id());
            }
            return new Run(run, outcome, null, null, line.id());
        }
    }

    public long taken() {
        return runs.stream().filter(run -> run.outcome().startsWith("accepted")).count();
    }
}
