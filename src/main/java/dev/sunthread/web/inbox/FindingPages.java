package dev.sunthread.web.inbox;

import dev.sunthread.inbox.Findings;
import dev.sunthread.inbox.OpenFinding;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads open findings with the lots and units they touch. */
@Repository
class FindingPages {

    private static final String CHOSEN = """
            FROM (%s) f
            WHERE (cast(:entry AS text) IS NULL OR f.entry = :entry) AND (cast(:answer AS text) IS NULL OR EXISTS (
              SELECT FROM genealogy.answer_finding a
              WHERE a.answer = :answer AND a.finding_entry = f.number AND a.finding_ordinal = f.ordinal))
            """.formatted(Findings.KNOWN);

    private final JdbcClient jdbc;

    FindingPages(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** How many open findings a choice leaves. */
    long count(FindingChoice choice, long cutoff) {
        return chosen("SELECT count(*) " + CHOSEN, choice, cutoff)
                .query(Long.class)
                .single();
    }

    /** Open findings of a choice behind the first so many, the newest happening first. */
    List<FindingRow> open(FindingChoice choice, long cutoff, long offset, int most) {
        List<OpenFinding> open = chosen(
                        "SELECT f.* " + CHOSEN + " ORDER BY f.occurred_at DESC, f.number DESC, f.ordinal"
                                + " LIMIT :most OFFSET :offset",
                        choice,
                        cutoff)
                .param("most", most)
                .param("offset", offset)
                .query(DataClassRowMapper.newInstance(OpenFinding.class))
                .list();
        Map<String, List<FindingSubject>> subjects =
                subjects(open.stream().map(OpenFinding::entry).distinct().toList());
        return open.stream()
                .map(finding -> new FindingRow(
                        finding,
                        subjects.getOrDefault(key(finding.entry(), finding.ordinal()), List.of()),
                        "settled-" + UUID.randomUUID()))
                .toList();
    }

    private JdbcClient.StatementSpec chosen(String sql, FindingChoice choice, long cutoff) {
        return jdbc.sql(sql)
                .param("cutoff", cutoff)
                .param("entry", choice.entry())
                .param("answer", choice.answer());
    }

    private Map<String, List<FindingSubject>> subjects(List<String> entries) {
        return jdbc
                .sql("""
                        SELECT e.id AS entry, fs.ordinal, l.number AS lot, k.label AS container, i.number AS item, u.serial, u.issuer,
                               CASE fs.kind WHEN 'CURE_RUN' THEN 'cure run' WHEN 'TEST_RUN' THEN 'test run' END AS what,
                               coalesce(cr.number, tr.number) AS name
                        FROM ledger.entry e JOIN inbox.finding_subject fs ON fs.entry = e.number
                        LEFT JOIN materials.lot l ON fs.kind = 'LOT' AND l.id = fs.subject
                        LEFT JOIN materials.container k ON fs.kind = 'CONTAINER' AND k.id = fs.subject
                        LEFT JOIN production.unit u ON fs.kind = 'UNIT' AND u.id = fs.subject
                        LEFT JOIN catalog.item i ON i.id = u.item
                        LEFT JOIN cure.run cr ON fs.kind = 'CURE_RUN' AND cr.id = fs.subject
                        LEFT JOIN electrical.run tr ON fs.kind = 'TEST_RUN' AND tr.id = fs.subject
                        WHERE e.id = ANY (:entries) ORDER BY l.number, k.label, u.serial
                        """)
                .param("entries", entries.toArray(String[]::new))
                .query(DataClassRowMapper.newInstance(FindingSubject.class))
                .list()
                .stream()
                .collect(Collectors.groupingBy(subject -> key(subject.entry(), subject.ordinal())));
    }

    private static String key(String entry, int ordinal) {
        return entry + " " + ordinal;
    }
}
