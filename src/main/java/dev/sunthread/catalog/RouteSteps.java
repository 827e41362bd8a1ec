package dev.sunthread.catalog;

import dev.sunthread.ledger.Remembered;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Repository;

/** The operations of released routes, as in force at a time; each revision is read once per transaction. */
@Repository
public class RouteSteps {

    private final Revisions revisions;
    private final Demands demands;
    private final Remembered remembered;
    private final RouteReading reading;

    RouteSteps(Revisions revisions, Demands demands, Remembered remembered, RouteReading reading) {
        this.revisions = revisions;
        this.demands = demands;
        this.remembered = remembered;
        this.reading = reading;
    }

    /** The operations that build a unit of an item, in their order; none if no route was in force. */
    public List<RouteStep> of(long item, OffsetDateTime at) {
        return revisions
                .inForce("route_revision", item, at)
                .map(revision -> remembered
                        .<Long, List<RouteStep>>of("route steps")
                        .computeIfAbsent(revision, asked -> reading.read(asked, demands.ofAll(item, at))))
                .orElse(List.of());
    }

    /** One operation of the route of an item; empty if the route in force did not have it. */
    public Optional<RouteStep> of(long item, String operation, OffsetDateTime at) {
        return of(item, at).stream()
                .filter(step -> step.operation().equals(operation))
                .findFirst();
    }
}
