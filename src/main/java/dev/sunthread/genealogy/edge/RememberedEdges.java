package dev.sunthread.genealogy.edge;

import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.EdgeSource;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Edges out of nodes, read once and given again from memory. */
public final class RememberedEdges implements EdgeSource {

    private final EdgeSource source;
    private final Map<TraceRef, List<Edge>> outOf = new HashMap<>();

    public RememberedEdges(EdgeSource source) {
        this.source = source;
    }

    @Override
    public Collection<Edge> outOf(Collection<TraceRef> nodes) {
        List<TraceRef> missing =
                nodes.stream().filter(node -> !outOf.containsKey(node)).toList();
        if (!missing.isEmpty()) {
            missing.forEach(node -> outOf.put(node, new ArrayList<>()));
            source.outOf(missing)
                    .forEach(edge -> outOf.getOrDefault(edge.from(), List.of()).add(edge));
        }
        return nodes.stream()
                .flatMap(node -> outOf.getOrDefault(node, List.of()).stream())
                .toList();
    }

    @Override
    public Collection<Edge> into(Collection<TraceRef> nodes) {
        return source.into(nodes);
    }
}
