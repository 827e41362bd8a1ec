package dev.sunthread.web.run;

import dev.sunthread.electrical.TestRuns;
import dev.sunthread.electrical.judging.TestVerdicts;
import dev.sunthread.inbox.Findings;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads a test run at a cut-off. */
@Repository
class TestRunPages {

    private static final String RECORDED = """
            SELECT r.entry AS number, i.level, i.number AS item, u.serial, u.issuer, s.code AS specification, q.code AS equipment,
                   r.started_at AS "from", r.ended_at AS until, lower(r.verdict) AS verdict, e.actor, e.id AS entry
            FROM electrical.run_record r JOIN ledger.entry e ON e.number = r.entry
            JOIN production.unit u ON u.id = r.unit JOIN catalog.item i ON i.id = u.item
            JOIN catalog.specification s ON s.id = r.specification JOIN catalog.equipment q ON q.id = r.equipment
            WHERE r.run = :run AND %s ORDER BY r.entry
            """.formatted(Known.at("r.entry"));

    /** Every result of the unit under the same specification, in the order of time. */
    private static final String CHAIN = """
            SELECT n.number AS run, o.started_at AS at, q.code AS equipment, lower(o.verdict) AS told,
              lower(replace(s.outcome, '_', ' ')) AS outcome,
              EXISTS (SELECT FROM inbox.finding f
                WHERE f.entry = o.entry AND f.rule = 'no-unit-is-tested-until-it-passes') AS repeated
            FROM electrical.run_record r
            JOIN electrical.run_record o ON o.unit = r.unit AND o.specification = r.specification
            JOIN electrical.run n ON n.id = o.run JOIN catalog.equipment q ON q.id = o.equipment
            LEFT JOIN electrical.standing s ON s.entry = o.entry AND s.kept
            WHERE r.entry = :entry AND %s ORDER BY o.ended_at, o.entry
            """.formatted(Known.at("o.entry"));

    private final TestRuns runs;
    private final Findings findings;
    private final TestVerdicts verdicts;
    private final TestCurves curves;
    private final JdbcClient jdbc;

    TestRunPages(TestRuns runs, Findings findings, TestVerdicts verdicts, TestCurves curves, JdbcClient jdbc) {
        this.runs = runs;
        this.findings = findings;
        this.verdicts = verdicts;
        this.curves = curves;
        this.jdbc = jdbc;
    }

    Optional<TestRunPage> read(String number, long cutoff) {
        return runs.find(number).map(run -> read(run, number, cutoff));
    }

    private TestRunPage read(long run, String number, long cutoff) {
        List<TestRunPage.Recorded> records = jdbc.sql(RECORDED)
                .param("run", run)
                .param("cutoff", cutoff)
                .query(DataClassRowMapper.newInstance(TestRunPage.Recorded.class))
                .list();
        return new TestRunPage(
                number,
                findings.touching(List.of(new TraceRef(TraceKind.TEST_RUN, run)), cutoff),
                records,
                records.stream().map(record -> judged(record, cutoff)).toList());
    }

    private TestRunPage.Judged judged(TestRunPage.Recorded record, long cutoff) {
        return new TestRunPage.Judged(
                record.entry(),
                verdicts.under(record.number(), cutoff).stream()
                        .map(RunVerdict::of)
                        .toList(),
                curves.of(record.number()),
                jdbc.sql(CHAIN)
                        .param("entry", record.number())
                        .param("cutoff", cutoff)
                        .query(DataClassRowMapper.newInstance(TestRunPage.Result.class))
                        .list());
    }
}
