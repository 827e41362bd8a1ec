package dev.sunthread.catalog;

import java.time.OffsetDateTime;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Released structures and routes, as in force at a time. */
@Repository
public class Structures {

    /** What a released definition says of a place or operation of an item. */
    public enum Allowed {
        YES,
        NO,
        NOTHING_RELEASED
    }

    private final JdbcClient jdbc;

    Structures(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Whether a unit of the parent item has this position and takes the child item there. */
    public Allowed places(long parentItem, String position, long childItem, OffsetDateTime at) {
        return inForce("structure_revision", parentItem, at)
                .map(entry -> exists(
                        "SELECT 1 FROM catalog.structure_position WHERE entry = ? AND position = ? AND item = ?",
                        entry,
                        position,
                        childItem))
                .orElse(Allowed.NOTHING_RELEASED);
    }

    /** Whether the route of the item has this operation. */
    public Allowed operates(long item, String operation, OffsetDateTime at) {
        return inForce("route_revision", item, at)
                .map(entry -> exists(
                        "SELECT 1 FROM catalog.route_operation WHERE entry = ? AND operation = ?", entry, operation))
                .orElse(Allowed.NOTHING_RELEASED);
    }

    private Optional<Long> inForce(String table, long item, OffsetDateTime at) {
        return jdbc.sql("SELECT entry FROM catalog." + table
                        + " WHERE item = ? AND effective_at <= ? ORDER BY effective_at DESC, entry DESC LIMIT 1")
                .params(item, at)
                .query(Long.class)
                .optional();
    }

    private Allowed exists(String sql, Object... params) {
        boolean found =
                jdbc.sql(sql).params(params).query(Integer.class).optional().isPresent();
        return found ? Allowed.YES : Allowed.NO;
    }
}
