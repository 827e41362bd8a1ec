package dev.sunthread.production;

import dev.sunthread.catalog.Demand;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Known;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/**
 * Looks at units again that had gone on before a run was told that does not stand: their next step was recorded first, and
 * found nothing wrong.
 */
@Service
public class UnitWentOn {

    /** What a unit did next: an operation, or with none of that name, into another unit or to a consignee. */
    record Next(long unit, @Nullable String operation, OffsetDateTime at) {}

    private static final String NEXT = """
            SELECT u.unit, s.operation, s.started_at AS at FROM production.step_unit u JOIN production.step s USING (entry)
            WHERE u.unit = ANY (:units) AND s.started_at >= :at AND %s
            UNION ALL
            SELECT i.child_unit, NULL, i.installed_at FROM production.installation i
            WHERE i.child_unit = ANY (:units) AND i.installed_at >= :at AND %s
            UNION ALL
            SELECT u.unit, NULL, s.shipped_at FROM production.shipment_unit u JOIN production.shipment s USING (entry)
            WHERE u.unit = ANY (:units) AND s.shipped_at >= :at AND %s
            ORDER BY at
            """.formatted(Known.now("s.entry"), Known.now("i.entry"), Known.now("s.entry"));

    private final Prerequisites prerequisites;
    private final JdbcClient jdbc;

    UnitWentOn(Prerequisites prerequisites, JdbcClient jdbc) {
        this.prerequisites = prerequisites;
        this.jdbc = jdbc;
    }

    /**
     * Says of each unit that went on since, and lacks what was demanded then, that it does.
     *
     * @param definition the recipe or specification of the run
     */
    public void afterARunThatDoesNotStand(Fact<?> fact, Demand.Way way, long definition, Map<Long, UnitName> units) {
        Map<Long, List<Next>> next = jdbc
                .sql(NEXT)
                .param("units", units.keySet().toArray(Long[]::new))
                .param("at", fact.occurredAt())
                .query(DataClassRowMapper.newInstance(Next.class))
                .list()
                .stream()
                .collect(Collectors.groupingBy(Next::unit, TreeMap::new, Collectors.toList()));
        next.forEach((unit, nexts) -> nexts.stream()
                .map(one -> prerequisites.lacked(one, Objects.requireNonNull(units.get(unit)), way, definition))
                .flatMap(Optional::stream)
                .findFirst()
                .ifPresent(unmet -> fact.shows(unmet.rule(), unmet.sentence(), unmet.remedy(), TraceRef.unit(unit))));
    }
}
