package dev.sunthread.station.work;

import dev.sunthread.catalog.RouteStep;
import dev.sunthread.kernel.UnitId;
import dev.sunthread.ledger.Known;
import dev.sunthread.production.UnitName;
import dev.sunthread.station.Say;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Which operations of a station are done on a unit already, and who did them. */
@Repository
class DoneWork {

    private static final DateTimeFormatter WRITTEN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss", Locale.ROOT);

    private static final String LAST = """
            SELECT e.actor, t.code, s.ended_at FROM production.step s JOIN production.step_unit w USING (entry)
            JOIN production.unit u ON u.id = w.unit JOIN catalog.item i ON i.id = u.item
            JOIN ledger.entry e ON e.number = s.entry JOIN catalog.station t ON t.id = s.station
            WHERE i.number = :item AND u.serial = :serial AND u.issuer = :issuer AND s.operation = :operation AND %s
            ORDER BY s.ended_at DESC, s.entry DESC LIMIT 1
            """.formatted(Known.now("s.entry"));

    private final StationRoutes routes;
    private final JdbcClient jdbc;

    DoneWork(StationRoutes routes, JdbcClient jdbc) {
        this.routes = routes;
        this.jdbc = jdbc;
    }

    /** The operations that may be done at a station and are done on a unit, in the order of its route. */
    List<RouteStep> here(UnitName unit, Recording recording) {
        Set<String> done = routes.done(unit);
        return routes.steps(unit.item(), recording.at()).stream()
                .filter(step -> done.contains(step.operation()) && step.mayBeDoneAt(recording.station()))
                .toList();
    }

    /** Says of an operation that is done on a unit who did it last, where and when. */
    Say by(UnitName unit, RouteStep step, OffsetDateTime seenFrom) {
        return jdbc.sql(LAST)
                .param("item", unit.item())
                .param("serial", unit.serial())
                .param("issuer", unit.issuer() == null ? UnitId.THIS_PLANT : unit.issuer())
                .param("operation", step.operation())
                .query((row, number) -> Say.of(
                        "unit.done-already",
                        unit.serial(),
                        step.name(),
                        row.getString(1),
                        row.getString(2),
                        WRITTEN.format(
                                row.getObject(3, OffsetDateTime.class).withOffsetSameInstant(seenFrom.getOffset()))))
                .single();
    }
}
