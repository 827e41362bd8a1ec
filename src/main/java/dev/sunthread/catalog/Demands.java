package dev.sunthread.catalog;

import dev.sunthread.ledger.Remembered;
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
            WHERE d.entry = :revision AND (:operation IS NULL OR o.sequence < (
                SELECT n.sequence FROM catalog.route_operation n WHERE n.entry = d.entry AND n.operation = :operation))
            ORDER BY o.sequence, 1, 3
            """;

    /** What is asked of a revision, which never changes once it is released. */
    private record Asked(long revision, @Nullable String operation) {}

    private final Revisions revisions;
    private final Remembered remembered;
    private final JdbcClient jdbc;

    Demands(Revisions revisions, Remembered remembered, JdbcClient jdbc) {
        this.revisions = revisions;
        this.remembered = remembered;
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

    /** What the last operation demands. */
    public List<Demand> ofLast(long item, OffsetDateTime at) {
        return revisions
                .inForce("route_revision", item, at)
                .map(revision -> remembered
                        .<Long, List<Demand>>of("demands of the last operation")
                        .computeIfAbsent(revision, asked -> ofLast(ofAll(item, at), asked)))
                .orElse(List.of());
    }

    private List<Demand> ofLast(List<Demand> all, long revision) {
        String last = jdbc.sql(
                        "SELECT operation FROM catalog.route_operation WHERE entry = ? ORDER BY sequence DESC LIMIT 1")
                .param(revision)
                .query(String.class)
                .single();
        return all.stream().filter(demand -> demand.operation().equals(last)).toList();
    }

    private List<Demand> demanded(long item, @Nullable String operation, OffsetDateTime at) {
        return revisions
                .inForce("route_revision", item, at)
                .map(revision -> remembered
                        .<Asked, List<Demand>>of("demands")
                        .computeIfAbsent(new Asked(revision, operation), this::demanded))
                .orElse(List.of());
    }

    private List<Demand> demanded(Asked asked) {
        return jdbc.sql(DEMANDED)
                .param("revision", asked.revision())
                .param("operation", asked.operation(), Types.VARCHAR)
                .query(DataClassRowMapper.newInstance(Demand.class))
                .list();
    }
}
