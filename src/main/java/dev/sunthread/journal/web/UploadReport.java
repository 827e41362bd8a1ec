package dev.sunthread.journal.web;

import dev.sunthread.journal.ImportStop;
import dev.sunthread.journal.ImportSummary;
import dev.sunthread.journal.LineOutcome;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What became of an uploaded journal: the counts, and the first lines that were not plainly accepted, flattened. */
public record UploadReport(
        String file,
        long accepted,
        long acceptedWithFinding,
        long knownBefore,
        long keptInInbox,
        List<Row> rows,
        @Nullable ImportStop stopped)
        implements Serializable {

    static final int MOST = 500;

    /** One thing to know of one line. */
    public record Row(int line, String outcome, String id, String field, String reason, String remedy)
            implements Serializable {}

    static final class Collecting {

        private final List<Row> rows = new ArrayList<>();

        void take(LineOutcome line) {
            if (rows.size() < MOST
                    && line.outcome() != LineOutcome.Outcome.ACCEPTED
                    && line.outcome() != LineOutcome.Outcome.KNOWN_BEFORE) {
                line.findings().forEach(f -> add(line, f.rule(), f.sentence(), f.remedy()));
                line.problems().forEach(p -> add(line, p.field(), p.reason(), p.remedy()));
            }
        }

        private void add(LineOutcome line, String field, String reason, String remedy) {
            String outcome = line.outcome().name().toLowerCase(Locale.ROOT).replace('_', ' ');
            rows.add(new Row(line.line(), outcome, String.valueOf(line.id()), field, reason, remedy));
        }

        UploadReport report(String file, ImportSummary summary) {
            return new UploadReport(
                    file,
                    summary.accepted(),
                    summary.acceptedWithFinding(),
                    summary.knownBefore(),
                    summary.keptInInbox(),
                    List.copyOf(rows.subList(0, Math.min(MOST, rows.size()))),
                    summary.stopped());
        }
    }
}
