package dev.sunthread.genealogy;

import dev.sunthread.genealogy.demand.Deviation;
import dev.sunthread.genealogy.demand.RouteRevision;
import dev.sunthread.genealogy.demand.RunDemand;
import dev.sunthread.genealogy.demand.StructureRevision;
import dev.sunthread.genealogy.records.DemandRecords;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What was said to be demanded. */
final class MemoryDemands implements DemandRecords {

    private final Remembered remembered;
    private final List<RouteRevision> routes;
    private final List<StructureRevision> structures;

    MemoryDemands(Remembered remembered) {
        this.remembered = remembered;
        this.routes = remembered.of("route").map(this::route).toList();
        this.structures = remembered.of("structure").map(this::structure).toList();
    }

    private RouteRevision route(Said route) {
        List<RouteRevision.Operation> operations = new ArrayList<>();
        for (Map<String, Object> operation : route.maps("operations")) {
            operations.add(operation(operations.size() + 1, operation));
        }
        return new RouteRevision(remembered.entry(route), item(route.text("item")), route.instant(), operations);
    }

    private RouteRevision.Operation operation(int sequence, Map<String, Object> body) {
        Map<Long, Set<Long>> consumes = new HashMap<>();
        Remembered.texts(body, "consumes").forEach(item -> consumes.put(item(item), new HashSet<>(Set.of(item(item)))));
        alternates(body)
                .forEach(alternate -> Objects.requireNonNull(consumes.get(item(alternate.get("item"))))
                        .add(item(alternate.get("alternate"))));
        Set<RunDemand> demands = Stream.concat(
                        demands(TraceKind.CURE_RUN, body, "cures"), demands(TraceKind.TEST_RUN, body, "tests"))
                .collect(Collectors.toSet());
        return new RouteRevision.Operation(
                sequence,
                (String) Objects.requireNonNull(body.get("operation")),
                "unit-alone".equals(body.get("reach")),
                consumes,
                demands);
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> alternates(Map<String, Object> body) {
        return (List<Map<String, Object>>) body.getOrDefault("alternates", List.of());
    }

    private Stream<RunDemand> demands(TraceKind kind, Map<String, Object> body, String field) {
        return Remembered.texts(body, field).stream()
                .map(code -> new RunDemand(kind, remembered.numbers().definition(kind, code)));
    }

    private StructureRevision structure(Said structure) {
        Map<String, Set<Long>> positions = new HashMap<>();
        structure
                .maps("positions")
                .forEach(position -> positions.put(
                        (String) Objects.requireNonNull(position.get("position")),
                        Remembered.texts(position, "items").stream()
                                .map(this::item)
                                .collect(Collectors.toSet())));
        return new StructureRevision(
                remembered.entry(structure), item(structure.text("item")), structure.instant(), positions);
    }

    private long item(@org.jspecify.annotations.Nullable Object number) {
        return remembered.numbers().item((String) Objects.requireNonNull(number));
    }

    @Override
    public List<RouteRevision> routes(Collection<Long> items) {
        return routes;
    }

    @Override
    public List<StructureRevision> structures(Collection<Long> items) {
        return structures;
    }

    @Override
    public Set<Long> demanding(Collection<Long> items) {
        return Stream.concat(
                        routes.stream().map(RouteRevision::item),
                        structures.stream().map(StructureRevision::item))
                .collect(Collectors.toSet());
    }

    @Override
    public Set<Long> mixedOf(Collection<Long> components) {
        return structures.stream()
                .filter(formula -> isOfLots(formula) && !Collections.disjoint(items(formula), components))
                .map(StructureRevision::item)
                .collect(Collectors.toSet());
    }

    @Override
    public Set<Long> componentsOf(Collection<Long> items) {
        return structures.stream()
                .filter(formula -> isOfLots(formula) && items.contains(formula.item()))
                .flatMap(formula -> items(formula).stream())
                .collect(Collectors.toSet());
    }

    @Override
    public Set<Long> alternatesOf(Collection<Long> items) {
        Stream<Set<Long>> accepted = Stream.concat(
                routes.stream()
                        .flatMap(route -> route.operations().stream())
                        .flatMap(operation -> operation.consumes().entrySet().stream())
                        .flatMap(taken ->
                                taken.getValue().stream().map(other -> new HashSet<>(List.of(taken.getKey(), other)))),
                structures.stream().flatMap(structure -> structure.positions().values().stream()));
        Set<Long> all = new HashSet<>(items);
        accepted.filter(same -> !Collections.disjoint(same, items)).forEach(all::addAll);
        return all;
    }

    private static Set<Long> items(StructureRevision structure) {
        return structure.positions().values().stream().flatMap(Set::stream).collect(Collectors.toSet());
    }

    private boolean isOfLots(StructureRevision structure) {
        return remembered
                .of("item")
                .anyMatch(one -> item(one.text("item")) == structure.item()
                        && one.text("tracking").equals("lot"));
    }

    @Override
    public Set<Long> demandingRuns(Collection<RunDemand> demands) {
        return routes.stream().map(RouteRevision::item).collect(Collectors.toSet());
    }

    @Override
    public List<RouteRevision> actingAlone() {
        return routes.stream()
                .filter(route -> route.operations().stream().anyMatch(RouteRevision.Operation::unitAlone))
                .toList();
    }

    @Override
    public Set<Long> demandedItems() {
        return Stream.concat(
                        routes.stream()
                                .flatMap(route -> route.operations().stream())
                                .flatMap(operation -> operation.consumes().values().stream()),
                        structures.stream().flatMap(structure -> structure.positions().values().stream()))
                .flatMap(Set::stream)
                .collect(Collectors.toSet());
    }

    @Override
    public List<Deviation> deviations(Collection<TraceRef> nodes) {
        return List.of();
    }
}
