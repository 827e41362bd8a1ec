package dev.sunthread.genealogy;

import dev.sunthread.genealogy.answer.AnswerHeads;
import dev.sunthread.genealogy.answer.AnswerStore;
import dev.sunthread.genealogy.answer.Answering;
import dev.sunthread.genealogy.making.Watch;
import dev.sunthread.kernel.Refused;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Objects;
import org.springframework.dao.QueryTimeoutException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/** Makes one answer: reads it in one view of the database that can't write, and keeps it in a short transaction apart. */
@Component
class AnswerMaker {

    private record Made(AnswerHead head, Answering.Answered answered) {}

    private final Answering answering;
    private final AnswerHeads heads;
    private final AnswerStore store;
    private final TraceLimits limits;
    private final Clock clock;
    private final TransactionTemplate reading;
    private final TransactionTemplate writing;

    AnswerMaker(
            Answering answering,
            AnswerHeads heads,
            AnswerStore store,
            TraceLimits limits,
            Clock clock,
            PlatformTransactionManager transactions) {
        this.answering = answering;
        this.heads = heads;
        this.store = store;
        this.limits = limits;
        this.clock = clock;
        this.reading = new TransactionTemplate(transactions);
        reading.setReadOnly(true);
        reading.setIsolationLevel(TransactionDefinition.ISOLATION_REPEATABLE_READ);
        this.writing = new TransactionTemplate(transactions);
    }

    void make(String id, TraceQuestion asked, String words, Watch watch) {
        Made made = read(id, asked, watch);
        watch.begins(Stage.KEEPING);
        OffsetDateTime now = OffsetDateTime.now(clock);
        writing.executeWithoutResult(status -> store.keep(made.head(), words, now, made.answered()));
        writing.executeWithoutResult(status -> store.forget(now.minus(limits.keptFor()), limits.keptLines(), now));
    }

    private Made read(String id, TraceQuestion asked, Watch watch) {
        try {
            return Objects.requireNonNull(reading.execute(status -> {
                Answering.Answered answered = answering.answer(asked, watch);
                return new Made(heads.of(id, asked, answered), answered);
            }));
        } catch (QueryTimeoutException e) {
            throw new Refused(
                    "A part of the answer takes longer than the database may work on it",
                    "Ask for less at once, or have sunthread.database.pools.traces.statement-timeout raised");
        }
    }
}
