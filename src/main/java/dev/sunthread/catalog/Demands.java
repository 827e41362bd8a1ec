package dev.sunthread.catalog;

import java.sql.Types;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The cures and tests that released routes demand, as in force at a time. */
@Repository
public class Demands {

    private static final String DEMANDED = """
            SELECT CASE WHEN d.recipe IS NULL THEN 'TEST' ELSE 'CURE' END AS way,
                   coalesce(d.recipe, d.specification) AS definition, coalesce(r.code, s.code) AS code, o.operation
            FROM catalog.route_demand d JOIN catalog.route_operation o USING (entry, operation)
            LEFT JOIN catalog.recipe r ON r.id = d.recipe
            LEFT JOIN catalog.specification s ON s.id = d.specification
            WHERE d.entry = (
                SELECT v.entry FROM catalog.route_revision v
                WHERE v.item = :item AND v.effective_at <= :at ORDER BY v.effective_at DESC, v.entry DESC LIMIT 1)
              AND (:operation IS NULL OR o.sequence < (
                SELECT n.sequence FROM catalog.route_operation n WHERE n.entry = d.entry AND n.operation = :operation))
            ORDER BY o.sequence, 1, 3
            """;

    private final JdbcClient jdbc;

    Demands(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What the operations before this one demand; nothing if the route does not have it. */
    public List<Demand> before(long item, String operation, OffsetDateTime at) {
        return demanded(item, operation, at);
    }

    /** What all operations demand. */
    public List<Demand> ofAll(long item, OffsetDateTime at) {
        return demanded(item, null, at);
    }

    private List<Demand> demanded(long item, @Nullable String operation, OffsetDateTime at) {
        return jdbc.sql(DEMANDED)
                .param("item", item)
                .param("at", at)
                .param("operation", operation, Types.VARCHAR)
                .query(DataClassRowMapper.newInstance(Demand.class))
                .list();
    }
}
