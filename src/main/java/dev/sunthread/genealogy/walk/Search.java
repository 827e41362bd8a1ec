package dev.sunthread.genealogy.walk;

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

    /** Two for each node: one that counts stays, and one for before matter was taken out of a unit, which does not. */
    private final List<@Nullable Label> labels = new ArrayList<>();

    Search(Graph graph, Lens lens) {
        this.graph = graph;
        this.lens = lens;
    }

    /** Searches from all starts at once, each with the instant it starts from. */
    void run(SortedMap<TraceRef, Long> starts) {
        Map<Integer, Label> first = new LinkedHashMap<>();
        starts.forEach((node, instant) -> {
            Label start = Label.start(lens.turn(instant));
            lower(spot(graph.number(node), false), start, first);
            if (lens.freesStays() && lens.direction() == Direction.FORWARD) {
                lower(spot(graph.number(node), true), start, first);
            }
        });
        Map<Integer, Label> frontier = first;
        while (!frontier.isEmpty()) {
            graph.load(
                    frontier.keySet().stream().map(spot -> spot / 2).distinct().toList());
            frontier = round(frontier);
        }
    }

    /** How the node was reached, null if it was not. */
    @Nullable
    Label label(int node) {
        Label bound = at(spot(node, false));
        Label free = lens.direction() == Direction.FORWARD ? null : at(spot(node, true));
        return free == null || bound != null && bound.mark() <= free.mark() ? bound : free;
    }

    /** The instant that a label stands for: an arrival when forward, a deadline when backward. */
    long instant(Label label) {
        return lens.turn(label.mark());
    }

    // the frontier keeps the labels of the round before: one lowered meanwhile belongs to the next round
    private Map<Integer, Label> round(Map<Integer, Label> frontier) {
        Map<Integer, Label> next = new LinkedHashMap<>();
        frontier.forEach((spot, label) ->
                graph.steps(spot / 2).forEach(step -> cross(step, spot % 2 == 1, label, next)));
        return next;
    }

    private void cross(Graph.Step step, boolean free, Label label, Map<Integer, Label> next) {
        Edge edge = step.edge();
        if (label.mark() > lens.highest(edge) || !lens.isOfClass(edge)) {
            return;
        }
        Label crossed = label.over(edge, Math.max(label.mark(), lens.given(edge)));
        boolean turns = lens.freesStays() && edge.takesOut() && lens.admits(edge);
        if (free) {
            lower(spot(step.end(), true), crossed, next);
        } else if (lens.admits(edge)) {
            lower(spot(step.end(), false), crossed, next);
        }
        if (turns) {
            lower(spot(step.end(), lens.direction() == Direction.BACKWARD), crossed, next);
        }
    }

    private void lower(int spot, Label label, Map<Integer, Label> next) {
        while (labels.size() <= spot) {
            labels.add(null);
        }
        Label known = labels.get(spot);
        if (known == null || label.mark() < known.mark()) {
            labels.set(spot, label);
            next.put(spot, label);
        }
    }

    private @Nullable Label at(int spot) {
        return spot < labels.size() ? labels.get(spot) : null;
    }

    private static int spot(int node, boolean free) {
        return 2 * node + (free ? 1 : 0);
    }
}
