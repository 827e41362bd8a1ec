package dev.sunthread.station.work;

import dev.sunthread.catalog.RouteStep;
import dev.sunthread.catalog.StructurePlace;
import dev.sunthread.production.UnitName;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Finds which operation comes next on a unit at a station, and what it still wants. */
@Component
public class Wants {

    private final StationRoutes routes;
    private final StationLoads loads;

    Wants(StationRoutes routes, StationLoads loads) {
        this.routes = routes;
        this.loads = loads;
    }

    /** The operations of a unit's route that are not done; all of them for a unit that is new. */
    List<RouteStep> left(UnitName unit, boolean isNew, OffsetDateTime at) {
        Set<String> done = isNew ? Set.of() : routes.done(unit);
        return routes.steps(unit.item(), at).stream()
                .filter(step -> !done.contains(step.operation()))
                .toList();
    }

    /**
     * The first operation left that may be done here; without a released choice of stations only the very next one
     * counts.
     */
    static Optional<RouteStep> next(List<RouteStep> left, String station) {
        return left.stream()
                .filter(step -> step.stations().contains(station))
                .findFirst()
                .or(() ->
                        left.stream().findFirst().filter(step -> step.stations().isEmpty()));
    }

    /** What the work in hand wants; empty if no operation is in hand. */
    Optional<Want> of(Work work, String station, OffsetDateTime at) {
        if (work.operation() == null || work.units().isEmpty()) {
            return Optional.empty();
        }
        UnitName unit = work.units().get(0);
        return routes.steps(unit.item(), at).stream()
                .filter(step -> step.operation().equals(work.operation()))
                .findFirst()
                .map(step -> want(work, unit, step, station, at));
    }

    private Want want(Work work, UnitName unit, RouteStep step, String station, OffsetDateTime at) {
        List<StructurePlace> places = routes.places(unit.item(), at);
        List<RouteStep.Consumed> used = step.consumes().stream()
                .filter(consumed -> places.stream().noneMatch(place -> Want.fits(consumed, place)))
                .filter(consumed -> work.taken().stream().noneMatch(taken -> Want.accepts(consumed, taken.item())))
                .toList();
        Map<String, String> supplied = new TreeMap<>();
        List<RouteStep.Consumed> missing = new ArrayList<>();
        List<Loaded> loaded = used.isEmpty() ? List.of() : loads.at(station);
        for (RouteStep.Consumed consumed : used) {
            Map<String, String> here = supplies(loaded, consumed);
            supplied.putAll(here);
            if (here.isEmpty()) {
                missing.add(consumed);
            }
        }
        return new Want(step, open(work, unit, step, places), missing, supplied);
    }

    // what several units get is used up in them; a part that has a position is put in unit by unit
    private List<StructurePlace> open(Work work, UnitName unit, RouteStep step, List<StructurePlace> places) {
        if (work.units().size() > 1) {
            return List.of();
        }
        Set<String> filled = routes.filled(unit);
        return places.stream()
                .filter(place -> !filled.contains(place.position()))
                .filter(place -> step.consumes().stream().anyMatch(consumed -> Want.fits(consumed, place)))
                .toList();
    }

    private static Map<String, String> supplies(List<Loaded> loaded, RouteStep.Consumed consumed) {
        return loaded.stream()
                .filter(one -> one.item() != null && Want.accepts(consumed, one.item()))
                .collect(Collectors.toMap(Loaded::position, one -> Objects.requireNonNull(one.item())));
    }
}
