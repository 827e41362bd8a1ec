package dev.sunthread.quality;

import dev.sunthread.catalog.Demand;
import dev.sunthread.ledger.Known;
import dev.sunthread.production.Waiver;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** A unit may go on without a cure or test once a deviation for it is signed. */
@Component
class SignedDeviations implements Waiver {

    private static final String SIGNED = """
            SELECT d.unit FROM quality.deviation d
            WHERE d.unit = ANY (:units) AND d.%s = :definition AND coalesce(d.operation, :operation) = :operation AND %s
            """;

    private final JdbcClient jdbc;

    SignedDeviations(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public Map<Long, Set<String>> operationsNotDone(Collection<Long> units) {
        Map<Long, Set<String>> signed = new HashMap<>();
        jdbc.sql("SELECT d.unit, d.operation FROM quality.operation_not_done d WHERE d.unit = ANY (?) AND "
                        + Known.now("d.entry"))
                .param(units.toArray(Long[]::new))
                .query(row -> {
                    signed.computeIfAbsent(row.getLong(1), any -> new HashSet<>())
                            .add(row.getString(2));
                });
        return signed;
    }

    @Override
    public Set<Long> waived(Demand demand, Collection<Long> units) {
        String column = demand.way() == Demand.Way.CURE ? "recipe" : "specification";
        return jdbc
                .sql(SIGNED.formatted(column, Known.now("d.entry")))
                .param("units", units.toArray(Long[]::new))
                .param("definition", demand.definition())
                .param("operation", demand.operation())
                .query(Long.class)
                .list()
                .stream()
                .collect(Collectors.toSet());
    }
}
