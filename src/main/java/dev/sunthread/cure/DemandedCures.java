package dev.sunthread.cure;

import dev.sunthread.catalog.Demand;
import dev.sunthread.ledger.Known;
import dev.sunthread.production.Assemblies;
import dev.sunthread.production.Prerequisite;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * A demanded cure is met by a run of its recipe that reached the unit: by itself, with its assembly or on a carrier. A run
 * whose raw data do not pass under the revision in force counts for nothing.
 */
@Component
class DemandedCures implements Prerequisite {

    private static final String RUN = "r.recipe = :recipe AND r.ended_at <= :at AND " + Known.now("r.entry")
            + " AND NOT EXISTS (SELECT FROM cure.standing v WHERE v.entry = r.entry"
            + " AND v.measured AND v.outcome <> 'PASSED')";

    /** Most are named by the run itself; only the rest is looked for in assemblies and on carriers. */
    private static final String NAMED = """
            SELECT m.unit FROM cure.run_unit m JOIN cure.run_record r USING (entry) WHERE m.unit = ANY (:units) AND %s
            """.formatted(RUN);

    // OFFSET 0 as in Assemblies
    private static final String CURED = Assemblies.WITH_AROUND_AND_CARRIED
            + """
            SELECT x.unit FROM around x
            CROSS JOIN LATERAL (SELECT m.entry FROM cure.run_unit m WHERE m.unit = x.other OFFSET 0) m
            CROSS JOIN LATERAL (SELECT r.* FROM cure.run_record r WHERE r.entry = m.entry OFFSET 0) r WHERE %1$s
            UNION
            SELECT x.unit FROM carried x
            CROSS JOIN LATERAL (SELECT m.entry FROM cure.run_carrier m WHERE m.carrier = x.carrier OFFSET 0) m
            CROSS JOIN LATERAL (SELECT r.* FROM cure.run_record r WHERE r.entry = m.entry OFFSET 0) r WHERE %1$s
            """.formatted(RUN + " AND x.during && tstzrange(r.started_at, r.ended_at, '[]')");

    private final JdbcClient jdbc;

    DemandedCures(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public Demand.Way way() {
        return Demand.Way.CURE;
    }

    @Override
    public Set<Long> met(Demand demand, Collection<Long> units, OffsetDateTime at) {
        Set<Long> met = read(NAMED, demand, units, at);
        List<Long> left = units.stream().filter(unit -> !met.contains(unit)).toList();
        if (!left.isEmpty()) {
            met.addAll(read(CURED, demand, left, at));
        }
        return met;
    }

    private Set<Long> read(String sql, Demand demand, Collection<Long> units, OffsetDateTime at) {
        return jdbc
                .sql(sql)
                .param("units", units.toArray(Long[]::new))
                .param("recipe", demand.definition())
                .param("at", at)
                .query(Long.class)
                .list()
                .stream()
                .collect(Collectors.toSet());
    }
}
