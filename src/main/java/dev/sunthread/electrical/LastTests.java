package dev.sunthread.electrical;

import dev.sunthread.ledger.Known;
import dev.sunthread.production.Assemblies;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The last valid test of units under a specification, of the unit itself or of what it was inside of then. */
@Repository
class LastTests {

    private static final String LAST = Assemblies.WITH_UP + """
            SELECT last.unit, last.entry, n.number AS run, last.started_at, last.verdict, s.said, s.kept FROM (
              SELECT DISTINCT ON (x.unit) x.unit, r.entry, r.run, r.started_at, r.verdict
              FROM up x JOIN electrical.result r ON r.unit = x.other
              WHERE r.specification = :specification AND r.verdict <> 'INVALID' AND r.ended_at <= :at
                AND x.during && tstzrange(r.started_at, r.ended_at, '[]') AND %s
              ORDER BY x.unit, r.ended_at DESC, r.entry DESC) last
            JOIN electrical.run n ON n.id = last.run LEFT JOIN electrical.standing s ON s.entry = last.entry
            """.formatted(Known.now("r.entry"));

    private final JdbcClient jdbc;

    LastTests(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * The last valid test of a unit.
     *
     * @param verdict what counts as its result
     * @param said what its raw data say; absent if no revision in force then states what could be judged
     * @param kept whether that is known already; absent likewise
     */
    record Last(
            long unit,
            long entry,
            String run,
            OffsetDateTime startedAt,
            String verdict,
            @Nullable String said,
            @Nullable Boolean kept) {

        boolean passed() {
            return verdict.equals(Verdict.PASS.name());
        }
    }

    /** The last test of each unit by a time, if it began not before another. */
    List<Last> since(long specification, Map<Long, OffsetDateTime> units, OffsetDateTime at) {
        return of(specification, units.keySet(), at).stream()
                .filter(test -> !test.startedAt().isBefore(units.getOrDefault(test.unit(), OffsetDateTime.MIN)))
                .toList();
    }

    private List<Last> of(long specification, Collection<Long> units, OffsetDateTime at) {
        return jdbc.sql(LAST)
                .param("units", units.toArray(Long[]::new))
                .param("specification", specification)
                .param("at", at)
                .query(DataClassRowMapper.newInstance(Last.class))
                .list();
    }
}
