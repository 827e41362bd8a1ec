package dev.sunthread.web.inbox;

import dev.sunthread.inbox.Findings;
import dev.sunthread.inbox.OpenFinding;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads open findings with the lots and units they touch. */
@Repository
class FindingPages {

    private static final int MOST = 200;
    private static final int MOST_LOOKED_THROUGH = 100_000;

    private final Findings findings;
    private final JdbcClient jdbc;

    FindingPages(Findings findings, JdbcClient jdbc) {
        this.findings = findings;
        this.jdbc = jdbc;
    }

    long count(long cutoff) {
        return findings.count(cutoff);
    }

    /** Open findings, the newest happening first; only those that one entry raised if it is given. */
    List<FindingRow> open(@Nullable String entry, long cutoff) {
        List<OpenFinding> open = entry == null
                ? findings.open(cutoff, MOST)
                : findings.open(cutoff, MOST_LOOKED_THROUGH).stream()
                        .filter(finding -> finding.entry().equals(entry))
                        .toList();
        Map<String, List<FindingSubject>> subjects =
                subjects(open.stream().map(OpenFinding::entry).distinct().toList());
        return open.stream()
                .map(finding -> new FindingRow(
                        finding,
                        subjects.getOrDefault(key(finding.entry(), finding.ordinal()), List.of()),
                        "settled-" + UUID.randomUUID()))
                .toList();
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
