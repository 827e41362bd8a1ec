package dev.sunthread.cure;

import dev.sunthread.ledger.Known;
import dev.sunthread.production.Assemblies;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Cures by a recipe that reached units: by themselves, with what they were in, with what was in them, or on carriers. */
@Repository
class CuresOfUnits {

    private static final String RUN = "r.recipe = :recipe AND r.ended_at <= :at AND " + Known.now("r.entry");

    /** Most are named by the run itself; only the rest is looked for in assemblies and on carriers. */
    private static final String NAMED = """
            SELECT DISTINCT m.unit FROM cure.run_unit m JOIN cure.run_record r USING (entry)
            WHERE m.unit = ANY (:units) AND %s AND NOT EXISTS (
              SELECT FROM cure.standing v WHERE v.entry = r.entry AND v.outcome <> 'PASSED')
            """.formatted(RUN);

    // OFFSET 0 as in Assemblies
    private static final String REACHED = Assemblies.WITH_AROUND_AND_CARRIED
            + """
            SELECT c.unit, c.entry, n.number AS run, s.outcome, s.said, s.kept FROM (
              SELECT x.unit, r.entry, r.run, r.ended_at FROM around x
              CROSS JOIN LATERAL (SELECT m.entry FROM cure.run_unit m WHERE m.unit = x.other OFFSET 0) m
              CROSS JOIN LATERAL (SELECT r.* FROM cure.run_record r WHERE r.entry = m.entry OFFSET 0) r WHERE %1$s
              UNION
              SELECT x.unit, r.entry, r.run, r.ended_at FROM carried x
              CROSS JOIN LATERAL (SELECT m.entry FROM cure.run_carrier m WHERE m.carrier = x.carrier OFFSET 0) m
              CROSS JOIN LATERAL (SELECT r.* FROM cure.run_record r WHERE r.entry = m.entry OFFSET 0) r WHERE %1$s) c
            JOIN cure.run n ON n.id = c.run LEFT JOIN cure.standing s ON s.entry = c.entry
            ORDER BY c.ended_at, c.entry
            """.formatted(RUN + " AND x.during && tstzrange(r.started_at, r.ended_at, '[]')");

    private final JdbcClient jdbc;

    CuresOfUnits(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * A cure that reached a unit.
     *
     * @param outcome what its raw data say; absent if no revision in force then states what could be judged
     * @param kept whether that is known already; absent likewise
     */
    record Reached(
            long unit,
            long entry,
            String run,
            @Nullable String outcome,
            @Nullable String said,
            @Nullable Boolean kept) {

        boolean passed() {
            return outcome == null || outcome.equals("PASSED");
        }
    }

    /** Those of the units that a run names that counts, by itself. */
    List<Long> namedByOneThatCounts(long recipe, Collection<Long> units, OffsetDateTime at) {
        return asked(NAMED, recipe, units, at).query(Long.class).list();
    }

    /** Every run that reached one of the units by a time, the earliest first. */
    Map<Long, List<Reached>> of(long recipe, Collection<Long> units, OffsetDateTime at) {
        return asked(REACHED, recipe, units, at).query(DataClassRowMapper.newInstance(Reached.class)).list().stream()
                .collect(Collectors.groupingBy(Reached::unit));
    }

    private JdbcClient.StatementSpec asked(String sql, long recipe, Collection<Long> units, OffsetDateTime at) {
        return jdbc.sql(sql)
                .param("units", units.toArray(Long[]::new))
                .param("recipe", recipe)
                .param("at", at);
    }
}
