package dev.sunthread.catalog;

import dev.sunthread.ledger.Remembered;
import java.time.OffsetDateTime;
import java.util.List;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** From what to what process values of operations are good by the routes in force. */
@Repository
public class ProcessLimits {

    private record Asked(long revision, String operation) {}

    private final Revisions revisions;
    private final Remembered remembered;
    private final JdbcClient jdbc;

    ProcessLimits(Revisions revisions, Remembered remembered, JdbcClient jdbc) {
        this.revisions = revisions;
        this.remembered = remembered;
        this.jdbc = jdbc;
    }

    /** The limits of an operation on units of an item. */
    public List<ValueBounds> of(long item, String operation, OffsetDateTime at) {
        return revisions
                .inForce("route_revision", item, at)
                .map(revision -> remembered
                        .<Asked, List<ValueBounds>>of("process limits")
                        .computeIfAbsent(new Asked(revision, operation), this::read))
                .orElse(List.of());
    }

    private List<ValueBounds> read(Asked asked) {
        return jdbc.sql("""
                        SELECT value, unit_of_measure, least, most FROM catalog.route_value
                        WHERE entry = ? AND operation = ? ORDER BY value
                        """)
                .params(asked.revision(), asked.operation())
                .query(DataClassRowMapper.newInstance(ValueBounds.class))
                .list();
    }
}
