package dev.sunthread.genealogy;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.genealogy.AnswersByHand.Classes;
import dev.sunthread.genealogy.answer.Answering;
import dev.sunthread.genealogy.edge.HistoryEdges;
import dev.sunthread.genealogy.history.HistoryRecords;
import dev.sunthread.genealogy.making.Watch;
import dev.sunthread.journal.StateCheck;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Manner;
import dev.sunthread.ledger.SealedInside;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Random small plants, told through the door in any order: every answer is the one found by reading the facts by hand
 * and writing down every path. {@code -Dsunthread.plants=5000} runs that many of them, {@code -Dsunthread.seed=7} others.
 */
@SunthreadTest
class PlantAgreementTests {

    private static final int PLANTS = Integer.getInteger("sunthread.plants", 4);
    private static final long SEED = Long.getLong("sunthread.seed", 0) * 1_000_000;
    private static final List<Integer> WORST_CLOCKS = List.of(0, 30, 60, 120);

    @Autowired
    Door door;

    @Autowired
    Sealer sealer;

    @Autowired
    Answering answering;

    @Autowired
    StateCheck state;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    PlatformTransactionManager transactions;

    @Test
    void everyAnswerIsTheOneFoundByHandInWhateverOrderFactsAreTold() {
        Plants.releaseItems(new Plant(door));
        for (int worst : WORST_CLOCKS) {
            for (int i = 0; i < PLANTS / WORST_CLOCKS.size(); i++) {
                assertAgreement(SEED + i, worst);
            }
        }
    }

    private void assertAgreement(long seed, int worst) {
        String name = "p" + seed + "w" + worst;
        OffsetDateTime at = new Draw(new Random(seed), name).moment();
        var answers = alone(() -> agreed(name, RandomPlant.of(seed, name, worst), seed, at));
        // whole answers, which add lines and shipments, cost most and are asked of some
        if (!answers.isEmpty()) {
            String twin = name + "t";
            List<Said> otherwise = RandomPlant.toldInOrder(RandomPlant.of(seed, twin, worst), new Random(seed));
            assertThat(alone(() -> answers(told(twin, otherwise), at))).as(name).isEqualTo(answers);
        }
    }

    // what one plant lacks may come from any lot of an item in the database, so each is alone in it
    private <T> T alone(Supplier<T> check) {
        return Objects.requireNonNull(new TransactionTemplate(transactions).execute(status -> {
            status.setRollbackOnly();
            return check.get();
        }));
    }

    private Map<String, Map<String, Classes>> agreed(String name, List<Said> said, long seed, OffsetDateTime at) {
        Random random = new Random(seed);
        TracedPlant plant = told(name, said);
        AnswersByHand byHand = plant.byHand();
        plant.assertSameWalks(byHand, questions(byHand, random));
        plant.assertSameEdges(
                new HistoryEdges(HistoryRecords.at(jdbc, sealer.last())),
                plant.said().size());
        assertSameEdgesAsKnownBefore(plant, random);
        assertThat(state.differences()).isEmpty();
        // reading node by node costs much and is done for some
        if (seed % 5 == 0) {
            plant.assertSameEdgesOfEachNode(new HistoryEdges(HistoryRecords.at(jdbc, sealer.last())));
        }
        return seed % 10 == 0 ? assertSameAnswers(plant, byHand, at) : Map.of();
    }

    private TracedPlant told(String name, List<Said> said) {
        said.forEach(one -> door.accept(one.envelope(), Manner.TOLD));
        SealedInside.last(sealer);
        return new TracedPlant(name, said, jdbc);
    }

    private static List<Question> questions(AnswersByHand byHand, Random random) {
        Draw draw = new Draw(random, "any");
        Stream<Question> moments =
                Stream.generate(() -> Question.at(Said.micros(draw.moment()))).limit(4);
        Stream<Question> shipments = byHand.shipments().stream().map(shipped -> Question.at(shipped.instant()));
        return Stream.of(Stream.of(Question.EVER, Question.NOW), moments, shipments)
                .flatMap(questions -> questions)
                .toList();
    }

    private void assertSameEdgesAsKnownBefore(TracedPlant plant, Random random) {
        int told = 1 + random.nextInt(plant.said().size());
        long cutoff = jdbc.sql(
                        "SELECT p.position FROM ledger.position p JOIN ledger.entry e ON e.number = p.entry WHERE e.id = ?")
                .param(plant.said().get(told - 1).id())
                .query(Long.class)
                .single();
        plant.assertSameEdges(new HistoryEdges(HistoryRecords.at(jdbc, cutoff)), told);
    }

    private Map<String, Map<String, Classes>> assertSameAnswers(
            TracedPlant plant, AnswersByHand byHand, OffsetDateTime at) {
        Map<String, Map<String, Classes>> expected = new TreeMap<>();
        plant.roots().forEach(root -> expected.put(local(plant, root), plant.expected(root, byHand, at)));
        assertThat(answers(plant, at)).as(plant.name()).isEqualTo(expected);
        expected.values().forEach(lines -> lines.values().forEach(PlantAgreementTests::assertPartOfEver));
        return expected;
    }

    private static void assertPartOfEver(Classes line) {
        Stream.of(line.now(), line.atShipment(), line.at())
                .flatMap(Stream::ofNullable)
                .forEach(then -> assertThat(line.ever().isAtLeast(then)).isTrue());
    }

    private Map<String, Map<String, Classes>> answers(TracedPlant plant, OffsetDateTime at) {
        Map<String, Map<String, Classes>> answers = new TreeMap<>();
        for (Root root : plant.roots()) {
            Map<String, Classes> lines = new TreeMap<>();
            // an answer that is made apart does not see what the test's transaction recorded
            answering
                    .answer(new TraceQuestion(TracedPlant.way(root), root, sealer.last(), at), Watch.NONE)
                    .lines()
                    .forEach(line -> lines.put(
                            line.name().substring(plant.name().length()),
                            new Classes(line.ever(), line.now(), line.atShipment(), line.at())));
            answers.put(local(plant, root), lines);
        }
        return answers;
    }

    private static String local(TracedPlant plant, Root root) {
        return root.toString().replace(plant.name() + "-", "");
    }
}
