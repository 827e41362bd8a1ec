package dev.sunthread.journal;

import dev.sunthread.journal.LineOutcome.Outcome;
import java.util.EnumMap;
import java.util.Map;

/** How many lines of an import came to which outcome. */
public record ImportSummary(long accepted, long acceptedWithFinding, long knownBefore, long keptInInbox) {

    static final class Counting {

        private final Map<Outcome, Long> counts = new EnumMap<>(Outcome.class);

        void count(LineOutcome line) {
            counts.merge(line.outcome(), 1L, Long::sum);
        }

        ImportSummary summary() {
            return new ImportSummary(
                    of(Outcome.ACCEPTED),
                    of(Outcome.ACCEPTED_WITH_FINDING),
                    of(Outcome.KNOWN_BEFORE),
                    of(Outcome.KEPT_IN_INBOX));
        }

        private long of(Outcome outcome) {
            return counts.getOrDefault(outcome, 0L);
        }
    }
}
