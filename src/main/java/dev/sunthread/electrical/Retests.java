package dev.sunthread.electrical;

import dev.sunthread.ledger.Known;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Finds tests that were repeated until they passed; told late, the failure may come after the pass. */
@Repository
class Retests {

    /** The test next to this one in time, before or behind it, of the same unit, that failed or passed. */
    private static final String NEXT_TO_IT = """
            SELECT r.started_at, r.ended_at, r.verdict FROM electrical.result r
            WHERE r.unit = n.unit AND r.specification = n.specification AND r.verdict IN ('PASS', 'FAIL')
              AND (r.ended_at, r.entry) %1$s (n.ended_at, n.entry) AND %2$s
            ORDER BY r.ended_at %3$s, r.entry %3$s LIMIT 1
            """;

    private static final String BEFORE = NEXT_TO_IT.formatted("<", Known.now("r.entry"), "DESC");
    private static final String BEHIND = NEXT_TO_IT.formatted(">", Known.now("r.entry"), "ASC");

    /** Steps on the unit and what was put into it or taken out of it, between two tests. */
    private static final String WORK = """
            SELECT FROM production.step_unit u JOIN production.step s USING (entry)
            WHERE u.unit = t.unit AND s.ended_at > t.failed AND s.started_at < t.passed AND %s
            UNION ALL
            SELECT FROM production.installation i JOIN production.parent_position p ON p.id = i.parent_position
            WHERE p.parent = t.unit AND i.installed_at BETWEEN t.failed AND t.passed AND %s
            UNION ALL
            SELECT FROM production.removal m
            WHERE m.parent = t.unit AND m.removed_at BETWEEN t.failed AND t.passed AND %s
            """.formatted(Known.now("s.entry"), Known.now("i.entry"), Known.now("m.entry"));

    private static final String PASSED_NEXT = """
            SELECT 1 FROM (
              SELECT n.unit, b.ended_at AS failed, n.started_at AS passed
              FROM electrical.result n CROSS JOIN LATERAL (%1$s) b
              WHERE n.entry = :entry AND b.verdict = 'FAIL' AND n.verdict = 'PASS'
              UNION ALL
              SELECT n.unit, n.ended_at, a.started_at
              FROM electrical.result n CROSS JOIN LATERAL (%2$s) a
              WHERE n.entry = :entry AND n.verdict = 'FAIL' AND a.verdict = 'PASS') t
            WHERE NOT EXISTS (%3$s) LIMIT 1
            """.formatted(BEFORE, BEHIND, WORK);

    private final JdbcClient jdbc;

    Retests(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Whether this test and the one next to it are a failure and then a pass with nothing done between. */
    boolean passedAfterFailureWithoutWork(long entry) {
        return jdbc.sql(PASSED_NEXT)
                .param("entry", entry)
                .query(Integer.class)
                .optional()
                .isPresent();
    }
}
