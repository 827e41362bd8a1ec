package dev.sunthread.inbox;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.util.Collection;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Findings as they stand at a cut-off. */
@Repository
public class Findings {

    private static final String OPEN = """
            SELECT e.id AS entry, f.ordinal, f.rule, f.sentence, f.remedy, e.occurred_at, e.source
            FROM inbox.finding f JOIN ledger.entry e ON e.number = f.entry
            WHERE %s AND NOT EXISTS (
              SELECT FROM inbox.finding_settlement s
              WHERE s.finding_entry = f.entry AND s.finding_ordinal = f.ordinal AND %s)
            """.formatted(Known.at("f.entry"), Known.at("s.entry"));

    private final JdbcClient jdbc;

    Findings(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Open findings, the newest happening first, at most so many. */
    public List<OpenFinding> open(long cutoff, int most) {
        return jdbc.sql(OPEN + " ORDER BY e.occurred_at DESC, f.entry DESC, f.ordinal LIMIT :most")
                .param("cutoff", cutoff)
                .param("most", most)
                .query(OpenFinding.class)
                .list();
    }

    /** How many findings are open. */
    public long count(long cutoff) {
        return jdbc.sql("SELECT count(*) FROM (" + OPEN + ") open")
                .param("cutoff", cutoff)
                .query(Long.class)
                .single();
    }

    /** Open findings that touch any of these. */
    public List<OpenFinding> touching(Collection<TraceRef> subjects, long cutoff) {
        String touched = subjects.stream()
                .map(ref -> "('" + ref.kind().name() + "', " + ref.id() + "::bigint)")
                .reduce((a, b) -> a + ", " + b)
                .orElse("('', 0::bigint)");
        return jdbc.sql(OPEN
                        + " AND EXISTS (SELECT FROM inbox.finding_subject fs JOIN (VALUES " + touched
                        + ") touched (kind, subject) USING (kind, subject)"
                        + " WHERE fs.entry = f.entry AND fs.ordinal = f.ordinal) ORDER BY f.entry, f.ordinal")
                .param("cutoff", cutoff)
                .query(OpenFinding.class)
                .list();
    }
}
