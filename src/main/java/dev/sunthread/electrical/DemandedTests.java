package dev.sunthread.electrical;

import dev.sunthread.catalog.Demand;
import dev.sunthread.ledger.Known;
import dev.sunthread.production.Assemblies;
import dev.sunthread.production.Prerequisite;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * A demanded test is met if the last valid one of the unit, or of what it was inside of then, passed: by its raw data
 * where a revision can judge them, else by what was told.
 */
@Component
class DemandedTests implements Prerequisite {

    private static final String PASSED = Assemblies.WITH_UP + """
            SELECT unit FROM (
              SELECT DISTINCT ON (x.unit) x.unit, r.verdict FROM up x JOIN electrical.result r ON r.unit = x.other
              WHERE r.specification = :specification AND r.verdict <> 'INVALID' AND r.ended_at <= :at
                AND x.during && tstzrange(r.started_at, r.ended_at, '[]') AND %s
              ORDER BY x.unit, r.ended_at DESC, r.entry DESC) last
            WHERE verdict = 'PASS'
            """.formatted(Known.now("r.entry"));

    private final JdbcClient jdbc;

    DemandedTests(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public Demand.Way way() {
        return Demand.Way.TEST;
    }

    @Override
    public Set<Long> met(Demand demand, Collection<Long> units, OffsetDateTime at) {
        return jdbc
                .sql(PASSED)
                .param("units", units.toArray(Long[]::new))
                .param("specification", demand.definition())
                .param("at", at)
                .query(Long.class)
                .list()
                .stream()
                .collect(Collectors.toSet());
    }
}
