package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.demand.RouteRevision;
import dev.sunthread.genealogy.demand.RunDemand;
import dev.sunthread.genealogy.demand.StructureRevision;
import dev.sunthread.genealogy.demand.UnitDemand;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the released routes and structures of one item demand of its units. */
record UnitDemands(long item, List<RouteRevision> routes, List<StructureRevision> structures) {

    /** The demands that something of these items may meet. */
    Stream<UnitDemand> of(Set<Long> items) {
        return Stream.concat(
                routes.stream().flatMap(route -> material(route, items)),
                structures.stream().flatMap(structure -> children(structure, items)));
    }

    /** The demands of children of any item. */
    Stream<UnitDemand> ofChildren() {
        return structures.stream()
                .flatMap(structure -> children(
                        structure,
                        structure.positions().values().stream()
                                .flatMap(Set::stream)
                                .collect(Collectors.toSet())));
    }

    /** The demands of these runs. */
    Stream<UnitDemand> ofRuns(Set<RunDemand> runs) {
        return routes.stream()
                .flatMap(route -> route.operations().stream()
                        .flatMap(operation -> operation.demands().stream()
                                .filter(runs::contains)
                                .map(run -> new UnitDemand.OfRun(
                                        item,
                                        run,
                                        route.times(run),
                                        operation.code(),
                                        after(route, operation.sequence())))));
    }

    private Stream<UnitDemand> material(RouteRevision route, Set<Long> items) {
        return route.operations().stream()
                .flatMap(operation -> operation.consumes().values().stream()
                        .filter(accepted -> !Collections.disjoint(accepted, items))
                        .filter(accepted -> !StructureRevision.haveAPlaceFor(accepted, structures))
                        .map(accepted -> new UnitDemand.OfMaterial(
                                item, operation.code(), accepted, after(route, operation.sequence()))));
    }

    private Stream<UnitDemand> children(StructureRevision structure, Set<Long> items) {
        Map<Set<Long>, Set<String>> positions = structure.positions().entrySet().stream()
                .filter(position -> !Collections.disjoint(position.getValue(), items))
                .collect(Collectors.groupingBy(
                        Map.Entry::getValue, Collectors.mapping(Map.Entry::getKey, Collectors.toSet())));
        return positions.entrySet().stream()
                .map(same -> new UnitDemand.OfChildren(item, same.getValue(), afterTakingIn(same.getKey())));
    }

    private Set<String> afterTakingIn(Collection<Long> items) {
        return routes.stream()
                .flatMap(route -> route.firstThatTakes(items).flatMap(first -> after(route, first).stream()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> after(RouteRevision route, int sequence) {
        return route.operations().stream()
                .filter(operation -> operation.sequence() > sequence)
                .map(RouteRevision.Operation::code)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
