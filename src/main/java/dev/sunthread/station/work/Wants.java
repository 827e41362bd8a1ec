package dev.sunthread.station.work;

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

    private final Routes routes;
    private final Loads loads;

    Wants(Routes routes, Loads loads) {
        this.routes = routes;
        this.loads = loads;
    }

    /** The operations of a unit's route that are not done; all of them for a unit that is new. */
    List<Step> left(UnitName unit, boolean isNew, String station, OffsetDateTime at) {
        Set<String> done = isNew ? Set.of() : routes.done(unit);
        return routes.steps(unit.item(), station, at).stream()
                .filter(step -> !done.contains(step.operation()))
                .toList();
    }

    /**
     * The first operation left that may be done here; without a released choice of stations only the very next one
     * counts.
     */
    static Optional<Step> next(List<Step> left) {
        return left.stream()
                .filter(step -> !step.anywhere() && step.here())
                .findFirst()
                .or(() -> left.stream().findFirst().filter(Step::anywhere));
    }

    /** What the work in hand wants; empty if no operation is in hand. */
    Optional<Want> of(Work work, String station, OffsetDateTime at) {
        if (work.operation() == null || work.units().isEmpty()) {
            return Optional.empty();
        }
        UnitName unit = work.units().get(0);
        return routes.steps(unit.item(), station, at).stream()
                .filter(step -> step.operation().equals(work.operation()))
                .findFirst()
                .map(step -> want(work, unit, step, station, at));
    }

    private Want want(Work work, UnitName unit, Step step, String station, OffsetDateTime at) {
        List<Place> places = routes.places(unit.item(), at);
        Set<String> filled = work.units().size() == 1 ? routes.filled(unit) : Set.of();
        List<Place> open = work.units().size() > 1
                ? List.of()
                : Want.places(step, places)
                        .filter(place -> !filled.contains(place.position()))
                        .toList();
        Map<String, String> supplied = new TreeMap<>();
        List<Set<String>> missing = new ArrayList<>();
        List<Loaded> loaded = loads.at(station);
        for (Set<String> accepted : step.consumes()) {
            if (!Want.hasAPlace(accepted, places) && !isTaken(work, accepted)) {
                Map<String, String> here = loaded.stream()
                        .filter(one -> one.item() != null && accepted.contains(one.item()))
                        .collect(Collectors.toMap(Loaded::position, one -> Objects.requireNonNull(one.item())));
                supplied.putAll(here);
                if (here.isEmpty()) {
                    missing.add(accepted);
                }
            }
        }
        return new Want(step, open, missing, supplied);
    }

    private static boolean isTaken(Work work, Set<String> accepted) {
        return work.taken().stream().anyMatch(taken -> accepted.contains(taken.item()));
    }
}
