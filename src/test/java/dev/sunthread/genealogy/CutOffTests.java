package dev.sunthread.genealogy;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.journal.Exports;
import dev.sunthread.journal.Restores;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Manner;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.TestDatabase;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Two random plants told fact by fact, with questions after each: what was answered then is answered ever after. */
@SunthreadTest
class CutOffTests {

    private static final List<String> PLANTS = List.of("p1", "p2");
    private static final int WORST_CLOCK = 60;

    @Autowired
    Door door;

    @Autowired
    Traces traces;

    @Autowired
    Exports exports;

    @Autowired
    Restores restores;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    ApplicationContext context;

    private final Random random = new Random(Long.getLong("sunthread.seed", 0));
    private final List<AnswerHead> answers = new ArrayList<>();

    @BeforeEach
    void tellAndAsk() {
        Plants.releaseItems(new Plant(door));
        for (Said said : inTurn()) {
            door.accept(said.envelope(), Manner.TOLD);
            ask(random(said));
        }
        assertThat(answers).hasSizeGreaterThan(40);
    }

    @Test
    void anAnswerAskedAgainAtItsCutOffIsTheSame() {
        jdbc.sql("DELETE FROM genealogy.answer").update();
        assertAnsweredAsBefore();
    }

    @Test
    void aRestoredDatabaseGivesEveryAnswerAgain() throws IOException {
        ByteArrayOutputStream journal = new ByteArrayOutputStream();
        exports.write(journal);
        TestDatabase.beginAgain(context);
        restores.run(new ByteArrayInputStream(journal.toByteArray()), count -> {});
        assertAnsweredAsBefore();
    }

    private void assertAnsweredAsBefore() {
        for (AnswerHead before : answers) {
            assertThat(traces.ask(before.question())).isEqualTo(before);
        }
    }

    // facts of several plants in turn, so that each answer has more told after it
    private List<Said> inTurn() {
        List<List<Said>> queues = new ArrayList<>();
        for (String plant : PLANTS) {
            queues.add(new ArrayList<>(RandomPlant.of(random.nextLong(), plant, WORST_CLOCK)));
        }
        List<Said> all = new ArrayList<>();
        while (!queues.isEmpty()) {
            List<Said> queue = queues.get(random.nextInt(queues.size()));
            all.add(queue.remove(0));
            queues.removeIf(List::isEmpty);
        }
        return all;
    }

    private Root random(Said said) {
        String plant = said.id().substring(0, said.id().lastIndexOf('-') + 1);
        List<Root> roots = Stream.of(
                        Draw.LOTS.stream().map(lot -> new Root.OfLot(plant + lot)),
                        Draw.UNITS.stream().map(unit -> new Root.OfUnit(TracedPlant.unit(plant + unit))),
                        Stream.of("X", "Y").map(supplier -> new Root.OfSupplierLot(plant + supplier)))
                .<Root>flatMap(all -> all)
                .toList();
        return roots.get(random.nextInt(roots.size()));
    }

    private void ask(Root root) {
        try {
            answers.add(traces.ask(new TraceQuestion(TracedPlant.way(root), root, null, null)));
        } catch (Refused notNamedYet) {
            assertThat(notNamedYet).hasMessageContaining("is not recorded");
        }
    }
}
