package dev.sunthread.genealogy;

import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import org.jspecify.annotations.Nullable;

/**
 * One search through the graph under one lens, in rounds: round n knows for each node the lowest mark over all paths
 * of at most n edges, and opens a node again only when it is reached with a strictly lower mark. So the label of a
 * node is its lowest mark, with the fewest edges that reach it, and the same for the same edges.
 *
 * <p>Rounds number at most the nodes; an edge is looked at once per lowering of the mark of its near node.
 */
final class Search {

    private final Graph graph;
    private final Lens lens;
    private final List<@Nullable Label> labels = new ArrayList<>();

    Search(Graph graph, Lens lens) {
        this.graph = graph;
        this.lens = lens;
    }

    /** Searches from all starts at once, each with the instant it starts from. */
    void run(SortedMap<TraceRef, Long> starts) {
        Map<Integer, Label> first = new LinkedHashMap<>();
        starts.forEach((node, instant) -> lower(graph.number(node), Label.start(lens.turn(instant)), first));
        Map<Integer, Label> frontier = first;
        while (!frontier.isEmpty()) {
            graph.load(frontier.keySet());
            frontier = round(frontier);
        }
    }

    /** How the node was reached, null if it was not. */
    @Nullable
    Label label(int node) {
        return node < labels.size() ? labels.get(node) : null;
    }

    /** The instant that a label stands for: an arrival when forward, a deadline when backward. */
    long instant(Label label) {
        return lens.turn(label.mark());
    }

    // the frontier keeps the labels of the round before: one lowered meanwhile belongs to the next round
    private Map<Integer, Label> round(Map<Integer, Label> frontier) {
        Map<Integer, Label> next = new LinkedHashMap<>();
        frontier.forEach((node, label) -> graph.steps(node).forEach(step -> cross(step, label, next)));
        return next;
    }

    private void cross(Graph.Step step, Label label, Map<Integer, Label> next) {
        Edge edge = step.edge();
        if (lens.admits(edge) && label.mark() <= lens.highest(edge)) {
            lower(step.end(), label.over(edge, Math.max(label.mark(), lens.given(edge))), next);
        }
    }

    private void lower(int node, Label label, Map<Integer, Label> next) {
        while (labels.size() < graph.size()) {
            labels.add(null);
        }
        Label known = labels.get(node);
        if (known == null || label.mark() < known.mark()) {
            labels.set(node, label);
            next.put(node, label);
        }
    }
}
