package dev.sunthread.genealogy;

import dev.sunthread.genealogy.edge.HistoryEdges;
import dev.sunthread.genealogy.records.Records;
import dev.sunthread.genealogy.walk.Arrival;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.EdgeSource;
import dev.sunthread.genealogy.walk.GivenEdges;
import dev.sunthread.genealogy.walk.Starts;
import dev.sunthread.genealogy.walk.Walk;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.simulator.SimulatedPlant;
import dev.sunthread.simulator.told.Told;
import dev.sunthread.simulator.world.Thing;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The trace over what a simulated plant told: its edges, read in both directions, and its answers. */
final class SimulatedTrace {

    private final Map<Thing, TraceRef> nodes;
    private final List<Edge> edges;
    private final Walk walk;

    private SimulatedTrace(Map<Thing, TraceRef> nodes, List<Edge> edges, Starts starts) {
        this.nodes = nodes;
        this.edges = edges;
        this.walk = new Walk(new GivenEdges(edges), starts);
    }

    static SimulatedTrace of(SimulatedPlant plant) {
        return of(plant.name(), said(plant.told()));
    }

    static SimulatedTrace of(String plant, List<Said> said) {
        Numbers numbers = new CountedNumbers(said);
        Records records = MemoryRecords.of(said, numbers);
        Map<Thing, TraceRef> nodes = new NamedThings(plant, said).nodes(numbers);
        return new SimulatedTrace(
                nodes, edgesOutOf(nodes.values(), new HistoryEdges(records)), (MemorySigns) records.signs());
    }

    /** A trace from other edges, in which everything counts as a suspect since ever. */
    static SimulatedTrace over(Map<Thing, TraceRef> nodes, EdgeSource source) {
        return new SimulatedTrace(nodes, edgesOutOf(nodes.values(), source), node -> Long.MIN_VALUE);
    }

    static List<Said> said(List<Told> told) {
        return told.stream()
                .map(one -> new Said(one.id(), one.kind(), one.occurredAt(), one.body()))
                .toList();
    }

    /** Every edge that leaves one of the nodes or anything reached from them. */
    static List<Edge> edgesOutOf(Collection<TraceRef> nodes, EdgeSource source) {
        List<Edge> edges = new ArrayList<>();
        Set<TraceRef> known = new HashSet<>(nodes);
        Collection<TraceRef> open = List.copyOf(known);
        while (!open.isEmpty()) {
            Collection<Edge> more = source.outOf(open);
            edges.addAll(more);
            open = more.stream().map(Edge::to).filter(known::add).toList();
        }
        return edges;
    }

    Map<Thing, TraceRef> nodes() {
        return nodes;
    }

    List<Edge> edges() {
        return edges;
    }

    /** What a suspect reaches among the named things, with its class; itself left out. */
    Map<Thing, Certainty> forward(Thing suspect, Question question) {
        return certainties(arrivals(suspect, question));
    }

    /** The same, with how each was found. */
    Map<Thing, Arrival> arrivals(Thing suspect, Question question) {
        return named(walk.forward(List.of(node(suspect)), question), suspect);
    }

    /** What reaches a thing among the named things, with its class; itself left out. */
    Map<Thing, Certainty> backward(Thing target, Question question) {
        return certainties(named(walk.backward(List.of(node(target)), question), target));
    }

    private static Map<Thing, Certainty> certainties(Map<Thing, Arrival> arrivals) {
        Map<Thing, Certainty> certainties = new TreeMap<>();
        arrivals.forEach((thing, arrival) -> certainties.put(thing, arrival.certainty()));
        return certainties;
    }

    private Map<Thing, Arrival> named(Map<TraceRef, Arrival> arrivals, Thing self) {
        Map<Thing, Arrival> named = new TreeMap<>();
        nodes.forEach((thing, node) -> {
            Arrival arrival = arrivals.get(node);
            if (arrival != null && !thing.equals(self)) {
                named.put(thing, arrival);
            }
        });
        return named;
    }

    private TraceRef node(Thing thing) {
        TraceRef node = nodes.get(thing);
        if (node == null) {
            throw new IllegalArgumentException(thing + " is not named in any record");
        }
        return node;
    }

    static TraceKind kind(Thing.Kind kind) {
        return switch (kind) {
            case LOT -> TraceKind.LOT;
            case CONTAINER -> TraceKind.CONTAINER;
            case UNIT -> TraceKind.UNIT;
            case CURE_RUN -> TraceKind.CURE_RUN;
            case TEST_RUN -> TraceKind.TEST_RUN;
            case STEP -> TraceKind.STATION_STEP;
        };
    }
}
