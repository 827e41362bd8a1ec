package dev.sunthread.genealogy;

import dev.sunthread.genealogy.edge.HistoryEdges;
import dev.sunthread.genealogy.records.Records;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.Starts;
import dev.sunthread.kernel.TraceRef;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The edges that follow from things said, read without a database. */
final class EdgesByHand {

    private final List<Edge> edges;
    private final Starts starts;

    EdgesByHand(List<Said> said, Numbers numbers, Map<String, TraceRef> nodes) {
        Records records = MemoryRecords.of(said, numbers);
        Set<TraceRef> from = new TreeSet<>(nodes.values());
        new FactsByHand(said).of("step").forEach(step -> from.add(TraceRef.step(numbers.entry(step.id()))));
        this.edges = SimulatedTrace.edgesOutOf(from, new HistoryEdges(records));
        this.starts = (MemorySigns) records.signs();
    }

    List<Edge> all() {
        return edges;
    }

    /** The gaps and steps among them. */
    Set<TraceRef> others(Map<String, TraceRef> nodes) {
        Set<TraceRef> others = new TreeSet<>();
        edges.forEach(edge -> Stream.of(edge.from(), edge.to()).forEach(others::add));
        nodes.values().forEach(others::remove);
        return others;
    }

    /** Since when a node counts as a suspect. */
    long start(TraceRef node) {
        return starts.of(node);
    }
}
