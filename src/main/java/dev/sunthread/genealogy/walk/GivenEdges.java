package dev.sunthread.genealogy.walk;

import dev.sunthread.kernel.TraceRef;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Edges held in memory, found from either end. */
public final class GivenEdges implements EdgeSource {

    private final Map<TraceRef, List<Edge>> outOf;
    private final Map<TraceRef, List<Edge>> into;

    public GivenEdges(Collection<Edge> edges) {
        this.outOf = edges.stream().collect(Collectors.groupingBy(Edge::from));
        this.into = edges.stream().collect(Collectors.groupingBy(Edge::to));
    }

    @Override
    public Collection<Edge> outOf(Collection<TraceRef> nodes) {
        return edges(outOf, nodes);
    }

    @Override
    public Collection<Edge> into(Collection<TraceRef> nodes) {
        return edges(into, nodes);
    }

    /** These nodes and all from which edges of this sort lead to them, over any number of others. */
    public Set<TraceRef> behind(Collection<TraceRef> nodes, Predicate<Edge> sort) {
        Set<TraceRef> behind = new HashSet<>(nodes);
        Deque<TraceRef> open = new ArrayDeque<>(behind);
        while (!open.isEmpty()) {
            into.getOrDefault(open.remove(), List.of()).stream()
                    .filter(sort)
                    .map(Edge::from)
                    .filter(behind::add)
                    .forEach(open::add);
        }
        return behind;
    }

    /** Those of the nodes into which matter was taken out of units. */
    public Set<TraceRef> takenOutInto(Collection<TraceRef> nodes) {
        return nodes.stream()
                .filter(node -> into.getOrDefault(node, List.of()).stream().anyMatch(Edge::takesOut))
                .collect(Collectors.toSet());
    }

    private static Collection<Edge> edges(Map<TraceRef, List<Edge>> by, Collection<TraceRef> nodes) {
        return nodes.stream()
                .flatMap(node -> by.getOrDefault(node, List.of()).stream())
                .toList();
    }
}
