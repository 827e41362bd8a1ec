package dev.sunthread.genealogy;

import dev.sunthread.genealogy.answer.AnswerHash;
import dev.sunthread.genealogy.answer.AnswerHeads;
import dev.sunthread.genealogy.answer.AnswerStore;
import dev.sunthread.genealogy.answer.Answering;
import dev.sunthread.genealogy.answer.AskedQuestion;
import dev.sunthread.genealogy.answer.LineQuery;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Sealer;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Asks the genealogy: which units a lot went into, and what went into a unit. An answer is of one cut-off, so that it
 * can be asked again with the same result; its lines are kept for paging.
 */
@Service
public class Traces {

    private final Sealer sealer;
    private final Answering answering;
    private final AnswerHeads heads;
    private final AnswerStore store;
    private final Clock clock;

    Traces(Sealer sealer, Answering answering, AnswerHeads heads, AnswerStore store, Clock clock) {
        this.sealer = sealer;
        this.answering = answering;
        this.heads = heads;
        this.store = store;
        this.clock = clock;
    }

    /**
     * Answers a question, as known at its cut-off or, without one, with everything committed now.
     *
     * @throws Refused if the root is not recorded, or the cut-off lies ahead of the ledger
     */
    @Transactional
    public AnswerHead ask(TraceQuestion question) {
        TraceQuestion asked =
                new TraceQuestion(question.way(), question.root(), cutoff(question), question.at(), question.wider());
        String words = AskedQuestion.write(asked);
        String id = AnswerHash.ofQuestion(words);
        return heads.find(id).orElseGet(() -> answer(asked, words, id));
    }

    /** What a kept answer says of itself. @throws Refused if it is kept no longer */
    public AnswerHead head(String answer) {
        return heads.find(answer).orElseThrow(() -> new Refused("This answer is kept no longer", "Ask again"));
    }

    /** How many records were sealed since the cut-off of an answer. */
    public long since(AnswerHead head) {
        return Math.max(
                0, sealer.last() - Objects.requireNonNull(head.question().cutoff()));
    }

    /** A page of lines, counted from 0. */
    public LinePage lines(String answer, LineFilter filter, int page, int size) {
        LineQuery query = new LineQuery(filter, (long) page * size, size);
        List<AnswerLine> lines = new ArrayList<>();
        store.each(answer, query, lines::add);
        return new LinePage(lines, store.total(answer, query), page, size);
    }

    /** Every line that the filter leaves, one by one. */
    public void each(String answer, LineFilter filter, Consumer<AnswerLine> each) {
        store.each(answer, new LineQuery(filter, 0, LineQuery.EVERY), each);
    }

    private long cutoff(TraceQuestion question) {
        long last = sealer.seal();
        if (question.cutoff() == null) {
            return last;
        }
        if (question.cutoff() > last || question.cutoff() < 0) {
            throw new Refused(
                    "The ledger has positions up to " + last + ", not " + question.cutoff(),
                    "Give a position up to " + last);
        }
        return question.cutoff();
    }

    private AnswerHead answer(TraceQuestion asked, String words, String id) {
        OffsetDateTime now = OffsetDateTime.now(clock);
        store.forgetBefore(now.minusDays(7));
        Answering.Answered answered = answering.answer(asked);
        store.keep(heads.of(id, asked, answered), words, now, answered);
        return heads.find(id).orElseThrow();
    }
}
