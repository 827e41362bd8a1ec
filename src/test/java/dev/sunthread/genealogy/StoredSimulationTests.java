package dev.sunthread.genealogy;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.genealogy.edge.HistoryEdges;
import dev.sunthread.genealogy.history.HistoryRecords;
import dev.sunthread.genealogy.records.Records;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.EdgeSource;
import dev.sunthread.genealogy.walk.Reason;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Manner;
import dev.sunthread.ledger.SealedInside;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.simulator.SimulatedPlant;
import dev.sunthread.simulator.told.Rates;
import dev.sunthread.simulator.world.Thing;
import dev.sunthread.testing.SunthreadTest;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * What simulated plants tell, told through the door: the database gives the edges that the same records give in memory,
 * and the same answers in whatever order they arrive. {@code -Dsunthread.simulated.stored=200} runs that many.
 */
@SunthreadTest
class StoredSimulationTests {

    private static final int PLANTS = Integer.getInteger("sunthread.simulated.stored", 8);
    private static final long SEED = Long.getLong("sunthread.seed", 0) * 1_000_000;
    private static final List<Map.Entry<String, Rates>> KINDS =
            List.copyOf(FaultKinds.held().entrySet());

    @Autowired
    Door door;

    @Autowired
    Sealer sealer;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    PlatformTransactionManager transactions;

    @Test
    void theDatabaseGivesTheEdgesThatTheRecordsInMemoryGive() {
        for (int i = 0; i < PLANTS; i++) {
            assertSameEdges(plant(i, "s" + i), kind(i).getKey());
        }
    }

    /** Plants that once differed. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource("lost supplier lot, 5000099")
    void theDatabaseGivesTheSameEdgesOfPlantsThatOnceDiffered(String kind, long seed) {
        Rates rates = Objects.requireNonNull(FaultKinds.held().get(kind));
        assertSameEdges(SimulatedPlant.of(seed, "s", rates), kind);
    }

    private void assertSameEdges(SimulatedPlant plant, String kind) {
        List<Said> said = SimulatedTrace.said(plant.told());
        alone(() -> {
            tell(said);
            assertSameEdges(plant.name() + " with " + kind, plant.name(), said);
            return true;
        });
    }

    @Test
    void theAnswersAreTheSameInAnotherOrderOfArrival() {
        for (int i = 0; i < PLANTS / 2; i++) {
            List<Said> said = SimulatedTrace.said(plant(i, "o").told());
            Map<String, Map<Thing, Certainty>> answers = alone(() -> answers(said));
            List<Said> otherwise = inAnotherOrder(said, new Random(i));
            assertThat(alone(() -> answers(otherwise)).entrySet())
                    .as("plant %d with %s", i, kind(i).getKey())
                    .containsExactlyInAnyOrderElementsOf(answers.entrySet());
        }
    }

    private static Map.Entry<String, Rates> kind(int i) {
        return KINDS.get(i % KINDS.size());
    }

    private static SimulatedPlant plant(int i, String name) {
        return SimulatedPlant.of(SEED + i, name, kind(i).getValue());
    }

    private void assertSameEdges(String of, String plant, List<Said> said) {
        Numbers numbers = new StoredNumbers(jdbc);
        Map<Thing, TraceRef> nodes = new NamedThings(plant, said).nodes(numbers);
        EdgeSource stored = new HistoryEdges(HistoryRecords.at(jdbc, sealer.last()));
        EdgeSource remembered = new HistoryEdges(MemoryRecords.of(said, numbers));
        List<Edge> expected = SimulatedTrace.edgesOutOf(nodes.values(), remembered);
        Set<TraceRef> all = new HashSet<>(nodes.values());
        expected.forEach(edge -> all.addAll(List.of(edge.from(), edge.to())));
        SimulatedTrace.edgesOutOf(nodes.values(), stored);
        assertSame(of + ", forward", bare(expected), bare(stored.outOf(all)));
        assertSame(
                of + ", backward",
                bare(expected),
                bare(stored.into(all).stream()
                        .filter(edge -> all.contains(edge.from()))
                        .toList()));
    }

    private static void assertSame(String of, Set<Edge> expected, Set<Edge> given) {
        assertThat(expected.stream().filter(edge -> !given.contains(edge)))
                .as("%s: missing", of)
                .isEmpty();
        assertThat(given.stream().filter(edge -> !expected.contains(edge)))
                .as("%s: too many", of)
                .isEmpty();
    }

    private static Set<Edge> bare(Collection<Edge> edges) {
        return edges.stream()
                .map(edge -> new Edge(
                        edge.from(),
                        edge.to(),
                        edge.certainty(),
                        edge.begin(),
                        edge.lastCrossing(),
                        edge.stayEnd(),
                        Reason.of("any", 0)))
                .collect(Collectors.toSet());
    }

    private Map<String, Map<Thing, Certainty>> answers(List<Said> said) {
        tell(said);
        Map<Thing, TraceRef> nodes = new NamedThings("o", said).nodes(new StoredNumbers(jdbc));
        Records records = HistoryRecords.at(jdbc, sealer.last());
        SimulatedTrace trace = SimulatedTrace.over(nodes, new HistoryEdges(records));
        Map<String, Map<Thing, Certainty>> answers = new TreeMap<>();
        for (Thing suspect : nodes.keySet()) {
            answers.put("ever " + suspect, trace.forward(suspect, Question.EVER));
            answers.put("now " + suspect, trace.forward(suspect, Question.NOW));
        }
        return answers;
    }

    private void tell(List<Said> said) {
        said.forEach(one -> door.accept(one.envelope(), Manner.TOLD));
        SealedInside.last(sealer);
    }

    // what one plant lacks may come from any lot in the database, so each is alone in it
    private <T> T alone(Supplier<T> check) {
        return Objects.requireNonNull(new TransactionTemplate(transactions).execute(status -> {
            status.setRollbackOnly();
            return check.get();
        }));
    }

    /**
     * Definitions and how lots came about first, for what is made of a lot is of its item as it is known then; the rest
     * in any order, what is taken back before what takes it back.
     */
    private static List<Said> inAnotherOrder(List<Said> said, Random random) {
        Map<String, Said> byId = new HashMap<>();
        said.forEach(one -> byId.put(one.id(), one));
        Set<Said> told = new LinkedHashSet<>(said.stream()
                .filter(one -> one.id().contains("-def-") || tellsWhereALotIsFrom(one))
                .toList());
        List<Said> rest = new ArrayList<>(said);
        Collections.shuffle(rest, random);
        for (Said one : rest) {
            String target = one.target();
            if (target != null) {
                told.add(Objects.requireNonNull(byId.get(target)));
            }
            told.add(one);
        }
        return List.copyOf(told);
    }

    private static boolean tellsWhereALotIsFrom(Said one) {
        return Set.of("receipt", "blend", "split", "merge", "relabel", "regrade", "recovery")
                        .contains(one.kind())
                || one.kind().equals("discharge") && one.textOrNull("into") != null;
    }
}
