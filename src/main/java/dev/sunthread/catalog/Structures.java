package dev.sunthread.catalog;

import dev.sunthread.ledger.Remembered;
import java.time.OffsetDateTime;
import java.util.List;
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

    private final Revisions revisions;
    private final Remembered remembered;
    private final JdbcClient jdbc;

    Structures(Revisions revisions, Remembered remembered, JdbcClient jdbc) {
        this.revisions = revisions;
        this.remembered = remembered;
        this.jdbc = jdbc;
    }

    /** Whether a unit of the parent item has this position and takes the child item there. */
    public Allowed places(long parentItem, String position, long childItem, OffsetDateTime at) {
        return revisions
                .inForce("structure_revision", parentItem, at)
                .map(entry -> exists(
                        "SELECT 1 FROM catalog.structure_position WHERE entry = ? AND position = ? AND item = ?",
                        entry,
                        position,
                        childItem))
                .orElse(Allowed.NOTHING_RELEASED);
    }

    /** Whether the route of the item has this operation. */
    public Allowed operates(long item, String operation, OffsetDateTime at) {
        return revisions
                .inForce("route_revision", item, at)
                .map(entry -> exists(
                        "SELECT 1 FROM catalog.route_operation WHERE entry = ? AND operation = ?", entry, operation))
                .orElse(Allowed.NOTHING_RELEASED);
    }

    /** A revision never changes once it is released, so each question is asked once per transaction. */
    private Allowed exists(String sql, Object... params) {
        return remembered.<List<Object>, Allowed>of(sql).computeIfAbsent(List.of(params), asked -> {
            boolean found =
                    jdbc.sql(sql).params(asked).query(Integer.class).optional().isPresent();
            return found ? Allowed.YES : Allowed.NO;
        });
    }
}
