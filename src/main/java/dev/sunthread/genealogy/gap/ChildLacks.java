package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.demand.InForce;
import dev.sunthread.genealogy.demand.RouteRevision;
import dev.sunthread.genealogy.demand.StructureRevision;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Children that the structure of a parent demands and nothing records: at some moment when the operation that puts
 * them in was over, or the parent was installed or shipped, no certain stay covered the position.
 */
final class ChildLacks {

    private final Course course;
    private final List<RouteRevision> routes;
    private final List<StructureRevision> structures;

    ChildLacks(Course course, List<RouteRevision> routes, List<StructureRevision> structures) {
        this.course = course;
        this.routes = routes;
        this.structures = structures;
    }

    List<Lack> all() {
        List<Lack> lacks = new ArrayList<>();
        for (StructureRevision structure : structures) {
            for (Map.Entry<String, Set<Long>> position : structure.positions().entrySet()) {
                moments(position.getValue())
                        .filter(moment ->
                                InForce.at(moment, structure.item(), structures).contains(structure))
                        .filter(moment -> isUncovered(position.getKey(), moment))
                        .filter(moment -> !isExcused(position.getKey(), position.getValue()))
                        .forEach(moment -> lacks.add(lack(structure, position, moment)));
            }
        }
        return lacks;
    }

    // a child may have been in for one of them and another for the next, so each is a demand of its own; without an
    // operation that takes the child in, only that the parent left proves it
    private Stream<Moment> moments(Set<Long> items) {
        Stream<Moment> later = routes.stream()
                .flatMap(route -> route.firstThatTakes(items)
                        .flatMap(fitting -> course.steps(route, sequence -> sequence > fitting).stream()
                                .filter(step ->
                                        InForce.at(step, route.item(), routes).contains(route))));
        return Stream.concat(later, course.leavings()).distinct();
    }

    private boolean isUncovered(String position, Moment moment) {
        return at(position)
                .noneMatch(stay -> stay.certainty() == Certainty.CERTAIN
                        && stay.begin().early() <= moment.late()
                        && stay.stayEnd().early() > moment.late());
    }

    private Stream<Edge> at(String position) {
        return course.children().stream()
                .filter(stay -> position.equals(stay.reason().named().get("position")));
    }

    private long emptySince(String position, Moment moment) {
        return at(position)
                .filter(stay -> stay.stayEnd().late() <= moment.early())
                .mapToLong(stay -> stay.stayEnd().early())
                .max()
                .orElse(course.signs().first());
    }

    private long emptyUntil(String position, Moment moment) {
        long filled = at(position)
                .filter(stay ->
                        stay.certainty() == Certainty.CERTAIN && stay.begin().early() > moment.late())
                .mapToLong(stay -> stay.begin().late())
                .min()
                .orElse(Long.MAX_VALUE);
        long emptied = at(position)
                .filter(stay -> stay.reason().key().equals(Edge.REMOVED)
                        && stay.stayEnd().early() > moment.late())
                .mapToLong(stay -> stay.stayEnd().late())
                .min()
                .orElse(Long.MAX_VALUE);
        return Math.min(filled, emptied);
    }

    private boolean isExcused(String position, Set<Long> items) {
        return course.deviations().stream()
                .anyMatch(deviation -> deviation.item() != null
                        && items.contains(deviation.item())
                        && deviation.excuses(course.unit(), null, position));
    }

    private Lack lack(StructureRevision structure, Map.Entry<String, Set<Long>> position, Moment moment) {
        long since = Math.min(emptySince(position.getKey(), moment), moment.late());
        Happening where = course.unrecorded(new Moment(since, moment.late()), null, null, structure.entry());
        return Lack.ofChild(
                position.getValue(), where, position.getKey(), moment, emptyUntil(position.getKey(), moment));
    }
}
