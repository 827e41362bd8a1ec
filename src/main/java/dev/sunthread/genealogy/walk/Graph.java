package dev.sunthread.genealogy.walk;

import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The part of the genealogy that walks in one direction have seen so far. Each node is asked of the source once, all
 * nodes of a frontier together; every later search finds its edges in memory, always in the same order.
 */
final class Graph {

    private final EdgeSource source;
    private final Direction direction;
    private final Map<TraceRef, Integer> numbers = new HashMap<>();
    private final List<TraceRef> nodes = new ArrayList<>();
    private final List<List<Step>> steps = new ArrayList<>();
    private final List<Boolean> loaded = new ArrayList<>();

    /** An edge as this direction leaves on it, and the number of the node it leads to. */
    record Step(Edge edge, int end) {}

    Graph(EdgeSource source, Direction direction) {
        this.source = source;
        this.direction = direction;
    }

    Direction direction() {
        return direction;
    }

    /** The number of a node, given when it is first met: 0, 1, 2, and so on. */
    int number(TraceRef node) {
        return numbers.computeIfAbsent(node, this::enter);
    }

    TraceRef node(int number) {
        return nodes.get(number);
    }

    int size() {
        return nodes.size();
    }

    /** Makes sure that the steps from all these nodes are known; asks the source at most once. */
    void load(Collection<Integer> frontier) {
        List<TraceRef> missing = frontier.stream()
                .filter(number -> !loaded.get(number))
                .peek(number -> loaded.set(number, true))
                .map(nodes::get)
                .toList();
        if (!missing.isEmpty()) {
            direction.leaving(missing, source).stream().sorted(Edge.ORDER).forEach(this::add);
        }
    }

    /** The steps from a loaded node, in the order of their edges. */
    List<Step> steps(int number) {
        return steps.get(number);
    }

    private void add(Edge edge) {
        steps.get(number(direction.near(edge))).add(new Step(edge, number(direction.far(edge))));
    }

    private int enter(TraceRef node) {
        nodes.add(node);
        steps.add(new ArrayList<>(2));
        loaded.add(false);
        return nodes.size() - 1;
    }
}
