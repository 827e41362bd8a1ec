package dev.sunthread.genealogy.edge;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.reach.Acting;
import dev.sunthread.genealogy.reach.Reach;
import dev.sunthread.genealogy.reach.Readings;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.Reason;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.stream.Stream;

/** Edges from cure runs, test runs and station-steps to every unit that they reached. */
final class RunEdges {

    private final Readings readings;
    private final Reach reach;

    RunEdges(Readings readings, Reach reach) {
        this.readings = readings;
        this.reach = reach;
    }

    Stream<Acting> outOf(Collection<TraceRef> nodes) {
        return of(readings.of(nodes.stream().filter(RunEdges::isHappening).toList()));
    }

    Stream<Acting> of(Collection<Happening> happenings) {
        reach.learn(happenings);
        return happenings.stream()
                .flatMap(happening -> reach.of(happening).entrySet().stream()
                        .map(reached ->
                                reach.acting(happening, edge(happening, reached.getKey(), reached.getValue()))));
    }

    private Edge edge(Happening happening, TraceRef reached, Certainty certainty) {
        return Edge.during(
                happening.node(),
                reached,
                certainty,
                reach.start(happening, reached),
                happening.end(),
                reason(happening));
    }

    static boolean isHappening(TraceRef node) {
        return node.kind() == TraceKind.CURE_RUN
                || node.kind() == TraceKind.TEST_RUN
                || node.kind() == TraceKind.STATION_STEP;
    }

    private static Reason reason(Happening happening) {
        Reason reason = Reason.of("went-through", happening.entry())
                .with("from", happening.start())
                .with("to", happening.end());
        return happening.operation() == null ? reason : reason.with("operation", happening.operation());
    }
}
