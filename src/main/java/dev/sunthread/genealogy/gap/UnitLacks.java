package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.demand.InForce;
import dev.sunthread.genealogy.demand.RouteRevision;
import dev.sunthread.genealogy.demand.RunDemand;
import dev.sunthread.genealogy.demand.StructureRevision;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What the released routes demand of a unit and nothing records. A demand exists once a later operation of the route,
 * an installation or a shipment is recorded, or a step of the operation itself that tells of no material. The route is
 * that which may have been in force in the time from the unit's first sign to the record after.
 */
final class UnitLacks {

    private final Course course;
    private final List<RouteRevision> routes;
    private final List<StructureRevision> structures;

    UnitLacks(Course course, List<RouteRevision> routes, List<StructureRevision> structures) {
        this.course = course;
        this.routes = routes;
        this.structures = structures;
    }

    List<Lack> all() {
        List<Lack> lacks = new ArrayList<>();
        for (RouteRevision route : routes) {
            for (RouteRevision.Operation operation : route.operations()) {
                operation.consumes().values().stream()
                        .filter(items -> !StructureRevision.haveAPlaceFor(items, structures))
                        .flatMap(items -> material(route, operation, items))
                        .forEach(lacks::add);
                operation.demands().stream()
                        .flatMap(demand -> run(route, operation, demand))
                        .forEach(lacks::add);
            }
        }
        lacks.addAll(new ChildLacks(course, routes, structures).all());
        return lacks.stream().distinct().toList();
    }

    private Stream<Lack> material(RouteRevision route, RouteRevision.Operation operation, Set<Long> items) {
        List<Given> own = course.stepsOf(operation.code()).toList();
        Stream<Moment> windows = own.isEmpty()
                ? unrecorded(route, operation)
                : own.stream()
                        .filter(step -> step.items().stream().noneMatch(items::contains))
                        .map(step -> step.happening().at());
        return windows.filter(window -> isInForce(route, window))
                .filter(window -> course.deviations().stream()
                        .noneMatch(deviation -> deviation.excuses(course.unit(), operation.code(), null)
                                && deviation.item() != null
                                && items.contains(deviation.item())))
                .map(window ->
                        Lack.ofMaterial(items, course.unrecorded(window, operation.code(), null, route.entry())));
    }

    private Stream<Lack> run(RouteRevision route, RouteRevision.Operation operation, RunDemand demand) {
        Stream<Moment> windows = wasDone(demand, route)
                ? course.windowsSinceSteps(route, operation, demand).stream()
                : unrecorded(route, operation);
        return windows.filter(window -> isInForce(route, window))
                .filter(window -> course.deviations().stream()
                        .noneMatch(deviation -> deviation.excuses(course.unit(), operation.code(), null)
                                && demand.equals(deviation.run())))
                .flatMap(window -> run(route, operation, demand, window));
    }

    private Stream<Lack> run(RouteRevision route, RouteRevision.Operation operation, RunDemand demand, Moment window) {
        Lack lack = Lack.ofRun(demand, course.unrecorded(window, operation.code(), demand, route.entry()));
        if (demand.run() != TraceKind.CURE_RUN) {
            return Stream.of(lack);
        }
        Moment since = new Moment(Math.min(course.signs().first(), window.early()), Long.MAX_VALUE);
        return Stream.of(lack, Lack.ofTray(demand, course.unrecorded(since, null, demand, route.entry()), window));
    }

    private Stream<Moment> unrecorded(RouteRevision route, RouteRevision.Operation operation) {
        return course.after(route, operation.sequence()).isEmpty()
                ? Stream.empty()
                : Stream.of(course.window(route, operation.sequence()));
    }

    // an operation that demands what another one does too needs a run of its own
    private boolean wasDone(RunDemand demand, RouteRevision route) {
        long done = course.runs(demand).map(Happening::node).distinct().count();
        return done >= route.times(demand);
    }

    private boolean isInForce(RouteRevision route, Moment window) {
        return InForce.at(window, route.item(), routes).contains(route);
    }
}
