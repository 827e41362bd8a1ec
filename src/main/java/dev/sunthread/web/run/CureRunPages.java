package dev.sunthread.web.run;

import dev.sunthread.cure.CureRuns;
import dev.sunthread.inbox.Findings;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import dev.sunthread.production.Carriers;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads a cure run at a cut-off with all that was in the load. */
@Repository
class CureRunPages {

    private static final String RECORDED = """
            SELECT r.entry AS number, p.code AS recipe, q.code AS equipment, r.started_at AS "from", r.ended_at AS until, e.actor, e.id AS entry
            FROM cure.run_record r JOIN ledger.entry e ON e.number = r.entry
            JOIN catalog.recipe p ON p.id = r.recipe JOIN catalog.equipment q ON q.id = r.equipment
            WHERE r.run = :run AND %s ORDER BY r.entry
            """.formatted(Known.at("r.entry"));

    private static final String CARRIERS = """
            SELECT c.code, m.position FROM cure.run_record r JOIN cure.run_carrier m USING (entry)
            JOIN production.carrier c ON c.id = m.carrier WHERE r.run = :run AND %s ORDER BY c.code
            """.formatted(Known.at("r.entry"));

    /** Units by themselves, and those on carriers of the load at any moment of the run, at any depth. */
    private static final String UNITS = """
            WITH RECURSIVE told AS (SELECT r.* FROM cure.run_record r WHERE r.run = :run AND %s),
            loaded AS (
              SELECT m.carrier, tstzrange(r.started_at, r.ended_at, '[]') AS during
              FROM told r JOIN cure.run_carrier m USING (entry)),
            %s
            SELECT DISTINCT i.level, i.number AS item, u.serial, u.issuer, m.carrier, m.position
            FROM (
              SELECT n.unit, NULL AS carrier, n.position FROM told JOIN cure.run_unit n USING (entry)
              UNION
              SELECT n.unit, k.code, n.position FROM units_on n JOIN production.carrier k ON k.id = n.carrier) m
            JOIN production.unit u ON u.id = m.unit JOIN catalog.item i ON i.id = u.item
            ORDER BY m.carrier NULLS FIRST, m.position, i.number, u.serial
            """.formatted(Known.at("r.entry"), Carriers.CONTENTS);

    private final CureRuns runs;
    private final Findings findings;
    private final JudgedCures judged;
    private final JdbcClient jdbc;

    CureRunPages(CureRuns runs, Findings findings, JudgedCures judged, JdbcClient jdbc) {
        this.runs = runs;
        this.findings = findings;
        this.judged = judged;
        this.jdbc = jdbc;
    }

    Optional<CureRunPage> read(String number, long cutoff) {
        return runs.find(number).map(run -> read(run, number, cutoff));
    }

    private CureRunPage read(long run, String number, long cutoff) {
        List<CureRunPage.Recorded> records = list(RECORDED, run, cutoff, CureRunPage.Recorded.class);
        return new CureRunPage(
                number,
                findings.touching(List.of(new TraceRef(TraceKind.CURE_RUN, run)), cutoff),
                records,
                list(CARRIERS, run, cutoff, CureRunPage.Carrier.class),
                list(UNITS, run, cutoff, CureRunPage.Member.class),
                records.stream().map(record -> judged.of(record, cutoff)).toList());
    }

    private <T> List<T> list(String sql, long run, long cutoff, Class<T> type) {
        return jdbc.sql(sql)
                .param("run", run)
                .param("cutoff", cutoff)
                .query(DataClassRowMapper.newInstance(type))
                .list();
    }
}
