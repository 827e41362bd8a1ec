package dev.sunthread.genealogy.walk;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.Question;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;

/** Edges held in memory, as the tests write them down. */
public final class History implements EdgeSource {

    public static final Reason TOLD = Reason.of("told", 0);

    final List<Edge> edges = new ArrayList<>();
    final List<TraceRef> asked = new ArrayList<>();
    int reads;

    public static History of(Edge... edges) {
        History history = new History();
        history.edges.addAll(List.of(edges));
        return history;
    }

    public static Edge use(TraceRef lot, TraceRef into, long at) {
        return Edge.atOnce(lot, into, Certainty.CERTAIN, Moment.at(at), TOLD);
    }

    public static Edge installed(TraceRef child, TraceRef parent, long from, long removal) {
        return Edge.installed(child, parent, Certainty.CERTAIN, Moment.at(from), Moment.at(removal), TOLD);
    }

    public static Edge run(TraceRef run, TraceRef unit, long start, long end) {
        return Edge.during(run, unit, Certainty.CERTAIN, Moment.at(start), Moment.at(end), TOLD);
    }

    public Set<TraceRef> reached(TraceRef suspect, Question question) {
        return new Walk(this).forward(List.of(suspect), question).keySet();
    }

    public Arrival arrival(TraceRef suspect, TraceRef node) {
        return Objects.requireNonNull(
                new Walk(this).forward(List.of(suspect), Question.EVER).get(node));
    }

    @Override
    public Collection<Edge> outOf(Collection<TraceRef> nodes) {
        return given(nodes, Edge::from);
    }

    @Override
    public Collection<Edge> into(Collection<TraceRef> nodes) {
        return given(nodes, Edge::to);
    }

    private List<Edge> given(Collection<TraceRef> nodes, Function<Edge, TraceRef> near) {
        reads++;
        asked.addAll(nodes);
        return edges.stream().filter(edge -> nodes.contains(near.apply(edge))).toList();
    }
}
