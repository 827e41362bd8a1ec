package dev.sunthread.cure;

import dev.sunthread.cure.judging.BondCure;
import dev.sunthread.ledger.Known;
import dev.sunthread.production.Assemblies;
import java.sql.Types;
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

    private static final String RUN =
            "r.recipe = :recipe AND r.ended_at <= coalesce(:at::timestamptz, 'infinity') AND " + Known.now("r.entry");

    // OFFSET 0 as in Assemblies
    private static final String REACHED = Assemblies.WITH_AROUND_AND_CARRIED
            + """
            , reached AS MATERIALIZED (
              SELECT DISTINCT ON (unit, entry) unit, entry, run, started_at, ended_at, position FROM (
                SELECT x.unit, r.entry, r.run, r.started_at, r.ended_at, m.position, x.other = x.unit AS itself FROM around x
                CROSS JOIN LATERAL (
                  SELECT m.entry, m.position FROM cure.run_unit m WHERE m.unit = x.other OFFSET 0) m
                CROSS JOIN LATERAL (SELECT r.* FROM cure.run_record r WHERE r.entry = m.entry OFFSET 0) r WHERE %1$s
                UNION ALL
                SELECT x.unit, r.entry, r.run, r.started_at, r.ended_at, m.position, false FROM carried x
                CROSS JOIN LATERAL (
                  SELECT m.entry, m.position FROM cure.run_carrier m WHERE m.carrier = x.carrier OFFSET 0) m
                CROSS JOIN LATERAL (SELECT r.* FROM cure.run_record r WHERE r.entry = m.entry OFFSET 0) r WHERE %1$s) ways
              ORDER BY unit, entry, itself DESC, position),
            -- once for each run, however many units it reached
            runs AS MATERIALIZED (
              SELECT d.entry, n.number AS run, s.outcome, s.said, s.kept
              FROM (SELECT DISTINCT entry, run FROM reached) d JOIN cure.run n ON n.id = d.run
              LEFT JOIN LATERAL (
                SELECT s.outcome, s.said, s.kept FROM cure.standing s WHERE s.entry = d.entry OFFSET 0) s ON true)
            SELECT c.unit, c.entry, r.run, c.started_at, c.position, r.outcome, r.said, r.kept FROM reached c JOIN runs r USING (entry)
            ORDER BY c.ended_at, c.entry
            """.formatted(RUN + " AND x.during && tstzrange(r.started_at, r.ended_at, '[]')");

    private final JdbcClient jdbc;

    CuresOfUnits(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * A cure that reached a unit.
     *
     * @param position where in the equipment it was then, or what it was on or in; absent if that is not known
     * @param outcome what its raw data say; absent if no revision in force then states what could be judged
     * @param kept whether that is known already; absent likewise
     */
    record Reached(
            long unit,
            long entry,
            String run,
            OffsetDateTime startedAt,
            @Nullable String position,
            @Nullable String outcome,
            @Nullable String said,
            @Nullable Boolean kept) {

        boolean passed() {
            return outcome == null || outcome.equals("PASSED");
        }

        BondCure asBondCure() {
            return new BondCure(entry, position);
        }
    }

    /** The runs that reached each unit by a time and began not before another, the earliest first. */
    Map<Long, List<Reached>> since(long recipe, Map<Long, OffsetDateTime> units, OffsetDateTime at) {
        return of(recipe, units.keySet(), at).values().stream()
                .flatMap(List::stream)
                .filter(run -> !run.startedAt().isBefore(units.getOrDefault(run.unit(), OffsetDateTime.MIN)))
                .collect(Collectors.groupingBy(Reached::unit));
    }

    /** Every run that reached one of the units by a time, or ever, the earliest first. */
    Map<Long, List<Reached>> of(long recipe, Collection<Long> units, @Nullable OffsetDateTime at) {
        return jdbc
                .sql(REACHED)
                .param("units", units.toArray(Long[]::new))
                .param("recipe", recipe)
                .param("at", at, Types.TIMESTAMP_WITH_TIMEZONE)
                .query(DataClassRowMapper.newInstance(Reached.class))
                .list()
                .stream()
                .collect(Collectors.groupingBy(Reached::unit));
    }
}
