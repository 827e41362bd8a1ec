package dev.sunthread.web.home;

import dev.sunthread.ledger.Known;
import dev.sunthread.web.Paged;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Finds the units that are in the plant still: neither scrapped nor shipped and not back, and in no such unit. */
@Repository
class UnitsInProcess {

    private static final int A_PAGE = 100;

    /**
     * What is inside what is asked of state, which is as new as the last entry; the rest of history. A unit that only
     * decisions name, or what was taken back, is a name and nothing in the plant.
     */
    private static final String IN_PROCESS = """
            WITH RECURSIVE gone (unit) AS (
              SELECT x.unit FROM production.scrapping x WHERE %s
              UNION
              SELECT m.unit FROM production.shipment s JOIN production.shipment_unit m USING (entry)
              WHERE %s AND NOT EXISTS (
                SELECT FROM production.unit_return r WHERE r.unit = m.unit AND r.returned_at >= s.shipped_at AND %s)
              UNION
              SELECT y.child_unit FROM gone g JOIN production.parent_position p ON p.parent = g.unit
              JOIN production.stay y ON y.parent_position = p.id
              WHERE y.child_unit IS NOT NULL AND y.applied AND upper_inf(y.during)),
            named (unit) AS (
              SELECT u.id FROM production.unit u WHERE u.named_by IN (
                SELECT h.entry FROM holds.hold h WHERE h.kind = 'UNIT'
                UNION ALL SELECT p.entry FROM holds.rule_pass p WHERE p.kind = 'UNIT'
                UNION ALL SELECT d.entry FROM quality.deviation d UNION ALL SELECT o.entry FROM quality.operation_not_done o
                UNION ALL SELECT w.target FROM ledger.withdrawal w)),
            only_named (unit) AS (
              SELECT n.unit FROM named n
              WHERE NOT EXISTS (SELECT FROM production.birth b WHERE b.unit = n.unit AND %s)
                AND NOT EXISTS (SELECT FROM production.step_unit t WHERE t.unit = n.unit AND %s)
                AND NOT EXISTS (SELECT FROM production.installation c WHERE c.child_unit = n.unit AND %s)
                AND NOT EXISTS (
                  SELECT FROM production.parent_position q JOIN production.installation c ON c.parent_position = q.id
                  WHERE q.parent = n.unit AND %s)
                AND NOT EXISTS (SELECT FROM production.unit_return r WHERE r.unit = n.unit AND %s)
                AND NOT EXISTS (SELECT FROM production.carrier_load l WHERE l.unit = n.unit AND %s)
                AND NOT EXISTS (SELECT FROM cure.run_unit c WHERE c.unit = n.unit AND %s)
                AND NOT EXISTS (SELECT FROM electrical.run_record e WHERE e.unit = n.unit AND %s))
            SELECT %%s FROM production.unit u JOIN catalog.item i ON i.id = u.item
            WHERE u.id NOT IN (SELECT unit FROM gone) AND u.id NOT IN (SELECT unit FROM only_named) AND (cast(:level AS text) IS NULL OR i.level = :level)
            """.formatted(
                    Known.at("x.entry"),
                    Known.at("s.entry"),
                    Known.at("r.entry"),
                    Known.at("b.entry"),
                    Known.at("t.entry"),
                    Known.at("c.entry"),
                    Known.at("c.entry"),
                    Known.at("r.entry"),
                    Known.at("l.entry"),
                    Known.at("c.entry"),
                    Known.at("e.entry"));

    private final JdbcClient jdbc;

    UnitsInProcess(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The number of each level that has any. */
    List<LevelCount> levels(long cutoff) {
        return about(
                        null,
                        cutoff,
                        IN_PROCESS.formatted("i.level, count(*) AS units") + " GROUP BY i.level ORDER BY i.level")
                .query(DataClassRowMapper.newInstance(LevelCount.class))
                .list();
    }

    Paged<UnitInProcess> list(@Nullable String level, @Nullable Integer page, long cutoff) {
        long total = about(level, cutoff, IN_PROCESS.formatted("count(*)"))
                .query(Long.class)
                .single();
        return Paged.of(page, A_PAGE, total, (offset, most) -> read(level, cutoff, offset, most));
    }

    List<UnitInProcess> all(@Nullable String level, long cutoff) {
        return read(level, cutoff, 0, Integer.MAX_VALUE);
    }

    private List<UnitInProcess> read(@Nullable String level, long cutoff, long offset, int most) {
        return about(
                        level,
                        cutoff,
                        IN_PROCESS.formatted("i.level, i.number AS item, u.serial, u.issuer")
                                + " ORDER BY i.level, i.number, u.serial, u.issuer LIMIT :most OFFSET :offset")
                .param("most", most)
                .param("offset", offset)
                .query(DataClassRowMapper.newInstance(UnitInProcess.class))
                .list();
    }

    private JdbcClient.StatementSpec about(@Nullable String level, long cutoff, String sql) {
        return jdbc.sql(sql).param("level", level).param("cutoff", cutoff);
    }
}
