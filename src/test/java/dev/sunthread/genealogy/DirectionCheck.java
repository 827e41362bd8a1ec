package dev.sunthread.genealogy;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.genealogy.edge.HistoryEdges;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.EdgeSource;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.simulator.Chance;
import dev.sunthread.simulator.SimulatedPlant;
import dev.sunthread.simulator.told.Rates;
import dev.sunthread.simulator.world.Thing;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Compares forward with backward, and answers at a time with the answer ever, on one simulated plant. */
final class DirectionCheck {

    private final long seed;
    private final SimulatedPlant plant;
    private final SimulatedTrace trace;

    DirectionCheck(long seed, Rates rates) {
        this.seed = seed;
        this.plant = SimulatedPlant.of(seed, "p", rates);
        this.trace = SimulatedTrace.of(plant);
    }

    void assertAgreement() {
        assertSameEdges();
        Map<String, Certainty> ever = assertSame(Question.EVER);
        long instant = new Chance(seed).any(plant.moments());
        for (Question question : List.of(Question.NOW, Question.at(instant))) {
            assertSame(question)
                    .forEach((pair, then) -> assertThat(ever.get(pair))
                            .as("plant %d, %s, %s", seed, question, pair)
                            .matches(known -> known != null && known.isAtLeast(then)));
        }
    }

    private void assertSameEdges() {
        List<Said> said = SimulatedTrace.said(plant.told());
        EdgeSource source = new HistoryEdges(MemoryRecords.of(said, new CountedNumbers(said)));
        Set<TraceRef> nodes = new HashSet<>(trace.nodes().values());
        // gaps are asked for once something led to them
        SimulatedTrace.edgesOutOf(nodes, source);
        trace.edges().forEach(edge -> nodes.addAll(List.of(edge.from(), edge.to())));
        Set<Edge> outOf = new HashSet<>(source.outOf(nodes));
        // what nothing leads to, such as a line that names a position only, is of no account to a suspect
        Set<Edge> into = new HashSet<>(source.into(nodes));
        into.removeIf(edge -> !nodes.contains(edge.from()));
        assertThat(without(outOf, into)).as("plant %d, only forward", seed).isEmpty();
        assertThat(without(into, outOf)).as("plant %d, only backward", seed).isEmpty();
    }

    private static Set<Edge> without(Set<Edge> edges, Set<Edge> others) {
        Set<Edge> left = new HashSet<>(edges);
        left.removeAll(others);
        return left;
    }

    private Map<String, Certainty> assertSame(Question question) {
        Map<String, Certainty> forward = new TreeMap<>();
        Map<String, Certainty> backward = new TreeMap<>();
        for (Thing thing : trace.nodes().keySet()) {
            trace.forward(thing, question).forEach((end, found) -> forward.put(thing + " in " + end, found));
            trace.backward(thing, question).forEach((start, found) -> backward.put(start + " in " + thing, found));
        }
        assertThat(backward).as("plant %d, %s", seed, question).isEqualTo(forward);
        return forward;
    }
}
