package dev.sunthread.inbox;

import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.util.Collection;
import java.util.List;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Findings as they stand at a cut-off. */
@Repository
public class Findings {

    /** The query that gives every open finding at the parameter {@code cutoff}, for lists that filter it. */
    public static final String KNOWN = """
            SELECT f.entry AS number, e.id AS entry, f.ordinal, f.rule, f.sentence, f.remedy, e.occurred_at, e.source
            FROM inbox.finding f JOIN ledger.entry e ON e.number = f.entry
            WHERE %s AND NOT EXISTS (
              SELECT FROM inbox.finding_settlement s
              WHERE s.finding_entry = f.entry AND s.finding_ordinal = f.ordinal AND %s)
            """.formatted(Known.at("f.entry"), Known.at("s.entry"));

    private static final String TOUCHING = """
             AND (f.entry, f.ordinal) IN (
               SELECT fs.entry, fs.ordinal FROM inbox.finding_subject fs WHERE fs.kind = 'LOT' AND fs.subject = ANY (:lots)
               UNION
               SELECT fs.entry, fs.ordinal FROM inbox.finding_subject fs WHERE fs.kind = 'UNIT' AND fs.subject = ANY (:units)
               UNION
               SELECT fs.entry, fs.ordinal FROM inbox.finding_subject fs WHERE fs.kind = 'CONTAINER' AND fs.subject = ANY (:containers)
               UNION
               SELECT fs.entry, fs.ordinal FROM inbox.finding_subject fs WHERE fs.kind = 'CURE_RUN' AND fs.subject = ANY (:cures)
               UNION
               SELECT fs.entry, fs.ordinal FROM inbox.finding_subject fs WHERE fs.kind = 'TEST_RUN' AND fs.subject = ANY (:tests))
            """;

    private final JdbcClient jdbc;

    Findings(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Open findings, the newest happening first, at most so many. */
    public List<OpenFinding> open(long cutoff, int most) {
        return jdbc.sql(KNOWN + " ORDER BY e.occurred_at DESC, f.entry DESC, f.ordinal LIMIT :most")
                .param("cutoff", cutoff)
                .param("most", most)
                .query(DataClassRowMapper.newInstance(OpenFinding.class))
                .list();
    }

    /** How many findings are open. */
    public long count(long cutoff) {
        return jdbc.sql("SELECT count(*) FROM (" + KNOWN + ") open")
                .param("cutoff", cutoff)
                .query(Long.class)
                .single();
    }

    /** Open findings that touch any of these. */
    public List<OpenFinding> touching(Collection<TraceRef> subjects, long cutoff) {
        return jdbc.sql(KNOWN + TOUCHING + " ORDER BY f.entry, f.ordinal")
                .param("cutoff", cutoff)
                .param("lots", ids(subjects, TraceKind.LOT))
                .param("units", ids(subjects, TraceKind.UNIT))
                .param("containers", ids(subjects, TraceKind.CONTAINER))
                .param("cures", ids(subjects, TraceKind.CURE_RUN))
                .param("tests", ids(subjects, TraceKind.TEST_RUN))
                .query(DataClassRowMapper.newInstance(OpenFinding.class))
                .list();
    }

    private static Long[] ids(Collection<TraceRef> subjects, TraceKind kind) {
        return subjects.stream()
                .filter(subject -> subject.kind() == kind)
                .map(TraceRef::id)
                .toArray(Long[]::new);
    }
}
