package dev.sunthread.production;

import dev.sunthread.ledger.Known;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** When operations were last done on units. */
@Repository
class OperationEnds {

    private static final String ENDS = """
            SELECT n.unit, s.operation, max(s.ended_at) FROM production.step_unit n JOIN production.step s USING (entry)
            WHERE n.unit = ANY (:units) AND s.ended_at <= :at AND %s GROUP BY n.unit, s.operation
            """.formatted(Known.now("n.entry"));

    private static final String BEFORE = """
            SELECT n.unit, max(s.ended_at) FROM production.step_unit n JOIN production.step s USING (entry)
            WHERE n.unit = ANY (:units) AND s.operation = :operation AND s.entry <> :entry AND s.ended_at <= :at AND %s
            GROUP BY n.unit
            """.formatted(Known.now("n.entry"));

    private final JdbcClient jdbc;

    OperationEnds(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Of each unit, when each operation recorded of it last ended by a time; asked of all at once. */
    Map<Long, Map<String, OffsetDateTime>> by(Collection<Long> units, OffsetDateTime at) {
        Map<Long, Map<String, OffsetDateTime>> ends = new HashMap<>();
        jdbc.sql(ENDS)
                .param("units", units.toArray(Long[]::new))
                .param("at", at)
                .query(row -> {
                    ends.computeIfAbsent(row.getLong(1), any -> new HashMap<>())
                            .put(row.getString(2), row.getObject(3, OffsetDateTime.class));
                });
        return ends;
    }

    /** When an operation last ended on each of these units, but for what this entry tells. */
    Map<Long, OffsetDateTime> before(long entry, String operation, Collection<Long> units, OffsetDateTime at) {
        Map<Long, OffsetDateTime> ends = new HashMap<>();
        jdbc.sql(BEFORE)
                .param("units", units.toArray(Long[]::new))
                .param("operation", operation)
                .param("entry", entry)
                .param("at", at)
                .query(row -> {
                    ends.put(row.getLong(1), row.getObject(2, OffsetDateTime.class));
                });
        return ends;
    }
}
