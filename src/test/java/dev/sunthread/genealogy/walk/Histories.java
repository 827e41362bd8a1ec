package dev.sunthread.genealogy.walk;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;
import net.jqwik.api.Tuple.Tuple2;

/** Small random histories with few instants, so that ties, loops and overlaps are frequent. */
final class Histories {

    static final long LAST = 6;
    static final List<TraceRef> NODES = List.of(
            TraceRef.lot(0),
            TraceRef.lot(1),
            TraceRef.lot(2),
            TraceRef.unit(0),
            TraceRef.unit(1),
            TraceRef.unit(2),
            new TraceRef(TraceKind.CURE_RUN, 0));

    private Histories() {}

    static Arbitrary<History> any() {
        return edges().list().ofMinSize(1).ofMaxSize(8).map(Histories::holding).withoutEdgeCases();
    }

    /** Since when a node counts as a suspect: ever for lots, some instant for all others. */
    static long start(TraceRef node) {
        return node.kind() == TraceKind.LOT ? Long.MIN_VALUE : 1 + node.id();
    }

    static Arbitrary<Moment> moments() {
        return Combinators.combine(Arbitraries.longs().between(0, LAST), Arbitraries.of(0, 0, 0, 1, 2))
                .as((instant, more) -> new Moment(instant, instant + more));
    }

    private static History holding(List<Edge> edges) {
        History history = new History();
        history.edges.addAll(edges);
        return history;
    }

    private static Arbitrary<Edge> edges() {
        Arbitrary<Tuple2<TraceRef, TraceRef>> ends = Combinators.combine(
                        Arbitraries.of(NODES), Arbitraries.of(NODES.subList(0, 6)))
                .as(Tuple::of);
        Arbitrary<Certainty> certainties = Arbitraries.of(
                Certainty.CERTAIN, Certainty.CERTAIN, Certainty.CERTAIN, Certainty.POSSIBLE, Certainty.UNPROVEN);
        return Combinators.combine(ends, certainties, moments(), moments(), Arbitraries.of(0, 1, 2, 3, 4))
                .as(Histories::edge);
    }

    private static Edge edge(Tuple2<TraceRef, TraceRef> ends, Certainty certainty, Moment a, Moment b, int shape) {
        TraceRef from = ends.get1();
        TraceRef to = ends.get2();
        Moment end = a.orLater(b);
        return switch (shape) {
            case 0 -> Edge.atOnce(from, to, certainty, a, History.TOLD);
            case 1 -> Edge.atOnce(from, to, certainty, a, History.TOLD).until(end);
            case 2 -> Edge.during(from, to, certainty, a, end, History.TOLD);
            case 3 -> Edge.installed(from, to, certainty, a, end, History.TOLD);
            default -> Edge.installed(from, to, certainty, a, Moment.NEVER, History.TOLD);
        };
    }
}
