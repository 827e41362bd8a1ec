package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.demand.Deviation;
import dev.sunthread.genealogy.demand.RouteRevision;
import dev.sunthread.genealogy.demand.RunDemand;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.records.OpenLine;
import dev.sunthread.genealogy.records.UnitSigns;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** All that is recorded of the course of one unit through the plant, and the kept lines that name it. */
record Course(
        UnitSigns signs,
        List<Given> given,
        List<Edge> parents,
        List<Edge> children,
        List<Moment> shippedWithin,
        List<OpenLine> kept,
        Collection<Deviation> deviations) {

    TraceRef unit() {
        return signs.node();
    }

    /** Steps of operations of the route whose sequence fits. */
    List<Moment> steps(RouteRevision route, IntPredicate sequence) {
        return route.operations().stream()
                .filter(operation -> sequence.test(operation.sequence()))
                .flatMap(operation -> stepsOf(operation.code()))
                .map(one -> one.happening().at())
                .toList();
    }

    /** Steps of the operation that name the unit; one that only reached it was done to another. */
    Stream<Given> stepsOf(String operation) {
        return given.stream()
                .filter(one -> operation.equals(one.happening().operation()))
                .filter(one -> one.happening().units().contains(unit()));
    }

    /** What proves that an operation of the route was over: later operations, an installation, a shipment. */
    List<Moment> after(RouteRevision route, int sequence) {
        return Stream.of(steps(route, later -> later > sequence).stream(), leavings(), keptAfter(route, sequence))
                .flatMap(some -> some)
                .toList();
    }

    // what could not be read whole proves no end of a window, but that what came before was due
    private Stream<Moment> keptAfter(RouteRevision route, int sequence) {
        Set<String> later = route.operations().stream()
                .filter(operation -> operation.sequence() > sequence)
                .map(RouteRevision.Operation::code)
                .collect(Collectors.toSet());
        return kept.stream()
                .filter(line -> line.isOfKind("shipment")
                        || line.isOfKind("step") && (line.operation() == null || later.contains(line.operation())))
                .map(OpenLine::at);
    }

    /** Installations of the unit in others, and its shipments by itself or within them. */
    Stream<Moment> leavings() {
        return Stream.of(parents.stream().map(Edge::begin), signs.shipped().stream(), shippedWithin.stream())
                .flatMap(some -> some);
    }

    /**
     * The time from the first sign of the unit to the record after an operation, by the first time that a later one was
     * done. The record before it is no bound: the operation before may have been done once more. An installation or a
     * shipment is no end: a unit may have come back, or been worked on in place.
     */
    Moment window(RouteRevision route, int sequence) {
        long late = steps(route, later -> later > sequence).stream()
                .mapToLong(Moment::late)
                .min()
                .orElse(Long.MAX_VALUE);
        return new Moment(Math.min(signs.first(), late), late);
    }

    /**
     * When each of the steps of an operation, which a later record tells was over, demands what comes after it began: as
     * long as no later operation surely began. What came before it, or after a later operation, is not what it demands.
     */
    List<Moment> windowsSinceSteps(RouteRevision route, RouteRevision.Operation operation, RunDemand demand) {
        List<Happening> later = route.operations().stream()
                .filter(other -> other.sequence() > operation.sequence())
                .flatMap(other -> stepsOf(other.code()))
                .map(Given::happening)
                .toList();
        return stepsOf(operation.code())
                .map(Given::happening)
                .filter(step -> isOver(step, later, keptAfter(route, operation.sequence())))
                .filter(step -> runs(demand)
                        .noneMatch(run -> run.surelyBeganSince(step)
                                && later.stream()
                                        .allMatch(
                                                other -> step.surelyBeganSince(other) || other.surelyBeganSince(run))))
                .map(step -> new Moment(step.start().early(), nextAfter(step, later)))
                .toList();
    }

    private boolean isOver(Happening step, List<Happening> later, Stream<Moment> kept) {
        return Stream.of(later.stream().map(Happening::at), leavings(), kept)
                .flatMap(some -> some)
                .anyMatch(moment -> !moment.surelyBefore(step.start()));
    }

    private static long nextAfter(Happening step, List<Happening> later) {
        return later.stream()
                .filter(other -> other.surelyBeganSince(step))
                .mapToLong(other -> other.at().late())
                .filter(late -> late >= step.start().early())
                .min()
                .orElse(Long.MAX_VALUE);
    }

    /** Runs that surely were done to the unit as is demanded. */
    Stream<Happening> runs(RunDemand demand) {
        return given.stream()
                .filter(one -> demand.equals(one.happening().under()) && one.certainty() == Certainty.CERTAIN)
                .map(Given::happening)
                .filter(run -> demand.run() == TraceKind.CURE_RUN || run.units().contains(unit()));
    }

    /** An operation on this unit that must have happened some time in the window. */
    Happening unrecorded(Moment window, @Nullable String operation, @Nullable RunDemand under, long entry) {
        Moment start = Moment.at(window.early());
        Moment end = Moment.at(window.late());
        return new Happening(unit(), entry, start, end, Set.of(unit()), Set.of(), operation, under);
    }
}
