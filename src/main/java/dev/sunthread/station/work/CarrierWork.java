package dev.sunthread.station.work;

import dev.sunthread.catalog.RouteStep;
import dev.sunthread.production.UnitName;
import dev.sunthread.station.Say;
import dev.sunthread.station.label.Label;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Trays, pallets and racks: loading one, working on all that is on one, clearing one. */
@Component
class CarrierWork {

    private final StationRoutes routes;
    private final Wants wants;
    private final SeveralWork units;

    CarrierWork(StationRoutes routes, Wants wants, SeveralWork units) {
        this.routes = routes;
        this.wants = wants;
        this.units = units;
    }

    /** A carrier with units on it has them worked on together, if an operation comes next on all of them here. */
    Turn begin(Label.OfCarrier carrier, Recording recording) {
        List<UnitName> on = routes.on(carrier.code());
        if (on.isEmpty()) {
            return Turn.accepted(Work.on(Work.Task.CARRIER).named(carrier.code()), "carrier.empty", carrier.code());
        }
        Optional<RouteStep> next = nextOnAll(on, recording);
        return next.isPresent()
                ? units.allAtOnce(on, Work.NOTHING.doing(next.get().operation(), recording.at()), recording)
                : Turn.accepted(
                        Work.on(Work.Task.CARRIER).named(carrier.code()), "carrier.holds", carrier.code(), on.size());
    }

    private Optional<RouteStep> nextOnAll(List<UnitName> on, Recording recording) {
        Set<Optional<RouteStep>> next = on.stream()
                .map(unit -> Wants.next(wants.left(unit, false, recording.at()), recording.station()))
                .collect(Collectors.toSet());
        return next.size() == 1 ? next.iterator().next() : Optional.empty();
    }

    /** Puts a unit on the carrier in hand, at the next position. */
    Turn put(Work work, Label.OfUnit unit, Recording recording) {
        String carrier = work.called();
        int position = routes.freeOn(carrier);
        recording.record(
                "carrier-load",
                Bodies.carrierLoad(carrier, unit.name(), null, String.valueOf(position), recording.station()));
        return Turn.accepted(work, "carrier.loaded", unit.called(), carrier, position);
    }

    /** Puts another carrier, with all that is on it, on the one in hand. */
    Turn put(Work work, Label.OfCarrier inner, Recording recording) {
        String carrier = work.called();
        recording.record(
                "carrier-load", Bodies.carrierLoad(carrier, null, inner.code(), inner.code(), recording.station()));
        return Turn.accepted(work, "carrier.loaded", inner.code(), carrier, inner.code());
    }

    /** Everything was taken off the carrier in hand. */
    Turn clear(Work work, Recording recording) {
        String carrier = work.called();
        if (routes.on(carrier).isEmpty()) {
            return Turn.refused(work, Say.of("carrier.is-empty", carrier), Say.of("carrier.is-empty.remedy"));
        }
        recording.record("carrier-unload", Bodies.carrierUnload(carrier, recording.station()));
        return Turn.accepted(work.over(), "carrier.cleared", carrier);
    }
}
