package dev.sunthread.journal;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.sunthread.journal.LineOutcome.Outcome;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How many lines of an import came to which outcome.
 *
 * @param stopped why it did not come to the end of the file; absent if it did
 */
public record ImportSummary(
        long accepted,
        long acceptedWithFinding,
        long knownBefore,
        long keptInInbox,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable ImportStop stopped) {

    public ImportSummary(long accepted, long acceptedWithFinding, long knownBefore, long keptInInbox) {
        this(accepted, acceptedWithFinding, knownBefore, keptInInbox, null);
    }

    static final class Counting {

        private final Map<Outcome, Long> counts = new EnumMap<>(Outcome.class);

        void count(LineOutcome line) {
            counts.merge(line.outcome(), 1L, Long::sum);
        }

        ImportSummary summary(@Nullable ImportStop stopped) {
            return new ImportSummary(
                    of(Outcome.ACCEPTED),
                    of(Outcome.ACCEPTED_WITH_FINDING),
                    of(Outcome.KNOWN_BEFORE),
                    of(Outcome.KEPT_IN_INBOX),
                    stopped);
        }

        private long of(Outcome outcome) {
            return counts.getOrDefault(outcome, 0L);
        }
    }
}
