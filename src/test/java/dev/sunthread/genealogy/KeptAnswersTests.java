package dev.sunthread.genealogy;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.genealogy.answer.AnswerStore;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.web.SmallPlant;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Kept answers are bounded; what is forgotten is the same when it is asked again. */
@SunthreadTest
class KeptAnswersTests {

    private static final OffsetDateTime LONG_AGO = OffsetDateTime.parse("2020-01-01T00:00:00Z");

    @Autowired
    Door door;

    @Autowired
    Traces traces;

    @Autowired
    AnswerStore store;

    @Autowired
    JdbcClient jdbc;

    private AnswerHead first;
    private AnswerHead second;

    @BeforeEach
    void asked() {
        SmallPlant.built(door);
        first = ask("A-17");
        second = ask("A-18");
    }

    @Test
    void forgetsWhatWasUsedLeastRecentlyOnceThereAreTooManyLines() {
        used(first, 3);
        used(second, 2);
        store.forget(LONG_AGO, lines(second), OffsetDateTime.now());
        assertThat(kept()).containsExactly(second.id());
        AnswerHead again = ask("A-17");
        assertThat(again.hash()).isEqualTo(first.hash());
        assertThat(again.id()).isEqualTo(first.id());
    }

    @Test
    void forgetsNothingThatIsInUse() {
        store.forget(LONG_AGO, 0, OffsetDateTime.now());
        assertThat(kept()).containsExactlyInAnyOrder(first.id(), second.id());
    }

    @Test
    void askingAgainKeepsAnAnswerInUse() {
        used(first, 3);
        used(second, 2);
        ask("A-17");
        store.forget(LONG_AGO, 0, OffsetDateTime.now());
        assertThat(kept()).containsExactly(first.id());
    }

    @Test
    void forgetsWhatIsTooOld() {
        used(first, 3);
        store.forget(OffsetDateTime.now().plusDays(1), Long.MAX_VALUE, OffsetDateTime.now());
        assertThat(kept()).containsExactly(second.id());
    }

    private AnswerHead ask(String lot) {
        return traces.ask(new TraceQuestion(Way.FORWARD, new Root.OfLot(lot), null, null));
    }

    private void used(AnswerHead answer, int hoursAgo) {
        jdbc.sql("UPDATE genealogy.answer SET used_at = now() - make_interval(hours => ?) WHERE id = ?")
                .params(hoursAgo, answer.id())
                .update();
    }

    private long lines(AnswerHead answer) {
        return jdbc.sql("SELECT count(*) FROM genealogy.answer_line WHERE answer = ?")
                .param(answer.id())
                .query(Long.class)
                .single();
    }

    private List<String> kept() {
        return jdbc.sql("SELECT id FROM genealogy.answer").query(String.class).list();
    }
}
