package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.demand.InForce;
import dev.sunthread.genealogy.demand.RouteRevision;
import dev.sunthread.genealogy.demand.StructureRevision;
import dev.sunthread.genealogy.records.DemandRecords;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Released routes and structures of items, each item's read once. */
public final class Definitions {

    private final DemandRecords records;
    private final Signs signs;
    private final Map<Long, List<RouteRevision>> routes = new HashMap<>();
    private final Map<Long, List<StructureRevision>> structures = new HashMap<>();
    private @Nullable List<RouteRevision> actingAlone;

    public Definitions(DemandRecords records, Signs signs) {
        this.records = records;
        this.signs = signs;
    }

    public void learn(Collection<Long> items) {
        Set<Long> missing = new HashSet<>(items);
        missing.removeAll(routes.keySet());
        if (missing.isEmpty()) {
            return;
        }
        missing.forEach(item -> routes.put(item, List.of()));
        routes.putAll(records.routes(missing).stream().collect(Collectors.groupingBy(RouteRevision::item)));
        structures.putAll(records.structures(missing).stream().collect(Collectors.groupingBy(StructureRevision::item)));
    }

    public List<RouteRevision> routes(long item) {
        learn(List.of(item));
        return routes.getOrDefault(item, List.of());
    }

    public List<StructureRevision> structures(long item) {
        learn(List.of(item));
        return structures.getOrDefault(item, List.of());
    }

    /** Those of the units that happenings name on which each acts alone: every route that may have been in force says so. */
    public Map<Happening, Set<TraceRef>> actAloneOn(Collection<Happening> happenings) {
        List<Happening> mentioned = happenings.stream()
                .filter(happening -> actingAlone().stream().anyMatch(route -> mentions(route, happening)))
                .toList();
        signs.learn(mentioned.stream()
                .flatMap(happening -> happening.units().stream())
                .toList());
        return mentioned.stream().collect(Collectors.toMap(Function.identity(), this::actsAloneOn));
    }

    private Set<TraceRef> actsAloneOn(Happening happening) {
        return happening.units().stream()
                .filter(unit -> actsAlone(happening, signs.of(unit).item()))
                .collect(Collectors.toSet());
    }

    private boolean actsAlone(Happening happening, long item) {
        List<RouteRevision> inForce = InForce.at(happening.at(), item, routes(item));
        return !inForce.isEmpty()
                && inForce.stream()
                        .allMatch(route -> mentions(route, happening)
                                && route.operations().stream()
                                        .filter(operation -> isOf(operation, happening))
                                        .allMatch(RouteRevision.Operation::unitAlone));
    }

    private static boolean mentions(RouteRevision route, Happening happening) {
        return route.operations().stream().anyMatch(operation -> isOf(operation, happening));
    }

    private static boolean isOf(RouteRevision.Operation operation, Happening happening) {
        return operation.code().equals(happening.operation())
                || happening.under() != null && operation.demands().contains(happening.under());
    }

    private List<RouteRevision> actingAlone() {
        if (actingAlone == null) {
            actingAlone = records.actingAlone();
        }
        return actingAlone;
    }
}
