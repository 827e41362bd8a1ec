package dev.sunthread.web.equipment;

import dev.sunthread.catalog.FoundError;
import dev.sunthread.catalog.FoundErrors;
import dev.sunthread.ledger.Known;
import dev.sunthread.web.Paged;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads what history tells of equipment at a cut-off. */
@Repository
class EquipmentPages {

    private static final int A_PAGE = 100;

    private static final String REVISIONS = """
            SELECT r.revision, r.name, st.code AS station, r.effective_at AS "from"
            FROM catalog.equipment_revision r LEFT JOIN catalog.station st ON st.id = r.station
            WHERE r.equipment = :equipment AND %s ORDER BY r.effective_at DESC, r.entry DESC
            """.formatted(Known.at("r.entry"));

    private static final String CHECKS = """
            SELECT c.checked_at AS at, lower(c.way) AS way, lower(c.verdict) AS verdict, s.code AS specification, c.evidence,
                   m.irradiance, m.band, m.lamp_hours,
                   (SELECT count(DISTINCT v.entry) FROM cure.verdict v WHERE v.checked = c.entry AND v.measured AND v.outcome <> 'PASSED')
                   + (SELECT count(DISTINCT v.entry) FROM electrical.verdict v
                      WHERE v.checked = c.entry AND v.measured AND v.outcome <> 'PASSED') AS lost,
                   e.id AS entry, c.entry AS number
            FROM catalog.equipment_check c JOIN ledger.entry e ON e.number = c.entry
            LEFT JOIN catalog.check_radiometer m ON m.entry = c.entry
            LEFT JOIN catalog.specification s ON s.id = c.specification
            WHERE c.equipment = :equipment AND %s ORDER BY c.checked_at DESC, c.entry DESC
            """.formatted(Known.at("c.entry"));

    private static final String RUNS = """
            SELECT what, number, under, "from", until,
              lower(replace(coalesce(cs.outcome, ts.outcome), '_', ' ')) AS verdict
            FROM (SELECT * FROM (
              (SELECT 'cure run' AS what, r.entry, n.number, p.code AS under, r.started_at AS "from", r.ended_at AS until
               FROM cure.run_record r JOIN cure.run n ON n.id = r.run JOIN catalog.recipe p ON p.id = r.recipe
               WHERE r.equipment = :equipment AND %1$s ORDER BY r.started_at DESC LIMIT :upto)
              UNION ALL
              (SELECT 'test run', r.entry, n.number, s.code, r.started_at, r.ended_at
               FROM electrical.run_record r JOIN electrical.run n ON n.id = r.run
               JOIN catalog.specification s ON s.id = r.specification
               WHERE r.equipment = :equipment AND %1$s ORDER BY r.started_at DESC LIMIT :upto)) runs
            ORDER BY "from" DESC, number LIMIT :most OFFSET :offset) shown
            LEFT JOIN cure.standing cs ON what = 'cure run' AND cs.entry = shown.entry AND cs.kept
            LEFT JOIN electrical.standing ts ON what = 'test run' AND ts.entry = shown.entry AND ts.kept
            ORDER BY "from" DESC, number
            """.formatted(Known.at("r.entry"));

    private static final String COUNT = """
            SELECT (SELECT count(*) FROM cure.run_record r WHERE r.equipment = :equipment AND %1$s)
                 + (SELECT count(*) FROM electrical.run_record r WHERE r.equipment = :equipment AND %1$s)
            """.formatted(Known.at("r.entry"));

    private final FoundErrors errors;
    private final JudgedSince since;
    private final JdbcClient jdbc;

    EquipmentPages(FoundErrors errors, JudgedSince since, JdbcClient jdbc) {
        this.errors = errors;
        this.since = since;
        this.jdbc = jdbc;
    }

    Optional<EquipmentPage> read(String code, @Nullable Integer runs, long cutoff) {
        return find(code)
                .map(equipment -> new EquipmentPage(
                        code,
                        list(REVISIONS, equipment, cutoff, EquipmentPage.Revision.class),
                        checks(equipment, cutoff),
                        since.of(equipment, code, cutoff),
                        Paged.of(
                                runs,
                                A_PAGE,
                                count(equipment, cutoff),
                                (offset, most) -> runs(equipment, cutoff, offset, most))));
    }

    List<EquipmentPage.Run> everyRun(String code, long cutoff) {
        return find(code)
                .map(equipment -> runs(equipment, cutoff, 0, Integer.MAX_VALUE))
                .orElse(List.of());
    }

    /** A check as it is recorded, without the errors it found. */
    private record Told(
            OffsetDateTime at,
            String way,
            String verdict,
            @Nullable String specification,
            String evidence,
            @Nullable BigDecimal irradiance,
            @Nullable String band,
            @Nullable BigDecimal lampHours,
            long lost,
            String entry,
            long number) {}

    private List<EquipmentPage.Check> checks(long equipment, long cutoff) {
        List<Told> told = list(CHECKS, equipment, cutoff, Told.class);
        Map<Long, List<FoundError>> found =
                errors.of(told.stream().map(Told::number).toList());
        return told.stream()
                .map(check -> new EquipmentPage.Check(
                        check.at(),
                        check.way(),
                        check.verdict(),
                        check.specification(),
                        check.evidence(),
                        found.getOrDefault(check.number(), List.of()).stream()
                                .map(EquipmentWords::of)
                                .toList(),
                        EquipmentWords.radiometer(check.irradiance(), check.band(), check.lampHours()),
                        check.lost(),
                        check.entry()))
                .toList();
    }

    private Optional<Long> find(String code) {
        return jdbc.sql("SELECT id FROM catalog.equipment WHERE code = ?")
                .param(code)
                .query(Long.class)
                .optional();
    }

    private long count(long equipment, long cutoff) {
        return about(COUNT, equipment, cutoff).query(Long.class).single();
    }

    private List<EquipmentPage.Run> runs(long equipment, long cutoff, long offset, int most) {
        return about(RUNS, equipment, cutoff)
                .param("most", most)
                .param("offset", offset)
                .param("upto", offset + most)
                .query(DataClassRowMapper.newInstance(EquipmentPage.Run.class))
                .list();
    }

    private <T> List<T> list(String sql, long equipment, long cutoff, Class<T> type) {
        return about(sql, equipment, cutoff)
                .query(DataClassRowMapper.newInstance(type))
                .list();
    }

    private JdbcClient.StatementSpec about(String sql, long equipment, long cutoff) {
        return jdbc.sql(sql).param("equipment", equipment).param("cutoff", cutoff);
    }
}
