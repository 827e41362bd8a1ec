package dev.sunthread.genealogy;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.electrical.judging.TestVerdicts;
import dev.sunthread.journal.Exports;
import dev.sunthread.journal.Restores;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.Kinds;
import dev.sunthread.ledger.Manner;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.TestDatabase;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.LongFunction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Random plants and a record of every kind told in turn, with questions in between: nothing that is recorded later
 * changes an answer. {@code -Dsunthread.seed=7} tells others, {@code -Dsunthread.asked=30} asks as often in ten records.
 */
@SunthreadTest
class KnownThenTests {

    private static final int ASKED = Integer.getInteger("sunthread.asked", 4);

    @Autowired
    Door door;

    @Autowired
    Kinds kinds;

    @Autowired
    Sealer sealer;

    @Autowired
    Traces traces;

    @Autowired
    TestVerdicts tests;

    @Autowired
    Exports exports;

    @Autowired
    Restores restores;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    ApplicationContext context;

    private final Random random = new Random(Long.getLong("sunthread.seed", 0));
    private final List<Answered> answers = new ArrayList<>();
    private final Set<String> toldAfterAnAnswer = new TreeSet<>();

    /** A question that was asked at a cut-off, and what came out: a trace with its lines, a window, or why neither. */
    private record Answered(String question, long cutoff, LongFunction<Object> ask, Object answer) {}

    @BeforeEach
    void tellAndAsk() {
        Plants.releaseItems(new Plant(door));
        List<Envelope> told = ToldInTurn.of(random);
        AnyQuestion any = new AnyQuestion(new NamedInBodies(told), random);
        for (Envelope envelope : told) {
            door.accept(envelope, Manner.TOLD);
            if (!answers.isEmpty()) {
                toldAfterAnAnswer.add(envelope.head().kind());
            }
            for (int i = 0; i < ASKED; i++) {
                if (random.nextInt(10) == 0) {
                    ask(any);
                }
            }
        }
        assertThat(answers.stream().filter(one -> one.answer() instanceof Asked.Seen))
                .hasSizeGreaterThan(50);
    }

    @Test
    void nothingRecordedLaterChangesAnAnswer() {
        assertThat(toldAfterAnAnswer)
                .containsExactlyElementsOf(
                        kinds.all().stream().map(Kind::name).sorted().distinct().toList());
        // all that is kept of answers and verdicts, so that each is computed anew
        List.of("genealogy.answer", "cure.verdict", "electrical.verdict")
                .forEach(derived -> jdbc.sql("DELETE FROM " + derived).update());
        assertAnsweredAsBefore();
    }

    @Test
    void aRestoredDatabaseAnswersAsBefore() throws IOException {
        ByteArrayOutputStream journal = new ByteArrayOutputStream();
        exports.write(journal);
        TestDatabase.beginAgain(context);
        restores.run(new ByteArrayInputStream(journal.toByteArray()), count -> {});
        assertAnsweredAsBefore();
    }

    private void assertAnsweredAsBefore() {
        for (Answered before : answers) {
            assertThat(answer(before.ask(), before.cutoff()))
                    .as("%s as known at %d", before.question(), before.cutoff())
                    .isEqualTo(before.answer());
        }
    }

    private void ask(AnyQuestion any) {
        switch (random.nextInt(12)) {
            case 0 -> {
                String equipment = any.equipment();
                String fault = any.fault();
                var noticed = any.moment();
                ask("Window of " + equipment, cutoff -> windows(cutoff).ofEquipment(equipment, fault, noticed));
            }
            case 1 -> {
                Scope.Position at = any.position();
                String fault = any.name("fault");
                var noticed = any.moment();
                ask(
                        "Window of " + at,
                        cutoff -> windows(cutoff).ofPosition(at.station(), at.position(), fault, noticed));
            }
            default -> {
                TraceQuestion trace = any.next();
                ask(
                        trace.toString(),
                        cutoff -> new Asked(traces).ask(knownAt(cutoff, trace)).withoutWords());
            }
        }
    }

    private void ask(String question, LongFunction<Object> ask) {
        long cutoff = sealer.seal();
        answers.add(new Answered(question, cutoff, ask, answer(ask, cutoff)));
    }

    private Windows windows(long cutoff) {
        return new Windows(jdbc, cutoff, tests);
    }

    private static TraceQuestion knownAt(long cutoff, TraceQuestion one) {
        return new TraceQuestion(one.way(), one.root(), cutoff, one.at(), one.wider());
    }

    private static Object answer(LongFunction<Object> ask, long cutoff) {
        try {
            return ask.apply(cutoff);
        } catch (Refused refused) {
            return String.valueOf(refused.getMessage());
        }
    }
}
