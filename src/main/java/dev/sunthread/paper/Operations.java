package dev.sunthread.paper;

import dev.sunthread.catalog.Items;
import dev.sunthread.catalog.RouteStep;
import dev.sunthread.catalog.RouteSteps;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Every operation of a route in force that may be done at a station. */
@Repository
public class Operations {

    /** An operation of the route of an item. */
    public record Operation(String item, String operation, String name) {}

    private final Items items;
    private final RouteSteps routes;
    private final Clock clock;
    private final JdbcClient jdbc;

    Operations(Items items, RouteSteps routes, Clock clock, JdbcClient jdbc) {
        this.items = items;
        this.routes = routes;
        this.clock = clock;
        this.jdbc = jdbc;
    }

    /** Those that may be done at a station now, by item and in the order of the route. */
    @Transactional(readOnly = true)
    public List<Operation> at(String station) {
        OffsetDateTime now = OffsetDateTime.now(clock);
        return jdbc
                .sql(
                        "SELECT DISTINCT i.number FROM catalog.route_revision r JOIN catalog.item i ON i.id = r.item ORDER BY 1")
                .query(String.class)
                .list()
                .stream()
                .flatMap(item -> steps(item, now).stream()
                        .filter(step -> step.mayBeDoneAt(station))
                        .map(step -> new Operation(item, step.operation(), step.name())))
                .toList();
    }

    private List<RouteStep> steps(String item, OffsetDateTime now) {
        return items.find(item).map(known -> routes.of(known.id(), now)).orElse(List.of());
    }
}
