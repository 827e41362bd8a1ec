package dev.sunthread.genealogy;

import dev.sunthread.genealogy.answer.AnswerHash;
import dev.sunthread.genealogy.answer.AnswerHeads;
import dev.sunthread.genealogy.answer.AnswerStore;
import dev.sunthread.genealogy.answer.AskedQuestion;
import dev.sunthread.genealogy.answer.LineQuery;
import dev.sunthread.genealogy.making.Makings;
import dev.sunthread.kernel.Busy;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Sealer;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import org.springframework.stereotype.Service;

/**
 * Asks the genealogy: which units a lot went into, and what went into a unit. An answer is of one cut-off, so that it
 * can be asked again with the same result; its lines are kept for paging.
 */
@Service
public class Traces {

    /** Sooner than an answer that nobody asks after is given up. */
    public static final Duration COME_AGAIN = Duration.ofSeconds(2);

    private static final int MOST_TURNS = 3;

    private final Sealer sealer;
    private final AnswerMaker maker;
    private final Makings makings;
    private final AnswerHeads heads;
    private final AnswerStore store;
    private final TraceLimits limits;

    Traces(
            Sealer sealer,
            AnswerMaker maker,
            Makings makings,
            AnswerHeads heads,
            AnswerStore store,
            TraceLimits limits) {
        this.sealer = sealer;
        this.maker = maker;
        this.makings = makings;
        this.heads = heads;
        this.store = store;
        this.limits = limits;
    }

    /**
     * Answers a question, as known at its cut-off or, without one, with everything committed now; waits until it is made,
     * but holds no connection to the database meanwhile.
     *
     * @throws Refused if the root is not recorded, or the cut-off lies ahead of the ledger
     * @throws Busy if too many answers are being made, or it is not made within the longest wait
     */
    public AnswerHead ask(TraceQuestion question) {
        TraceQuestion asked = known(question);
        AnswerHead answer = within(
                        asked, limits.longestWait(), Thread.currentThread().getName())
                .answer();
        if (answer == null) {
            throw notYet();
        }
        return answer;
    }

    /** Says that an answer took longer than whoever asked for it waits. */
    public static Busy notYet() {
        return new Busy("The answer is not made yet", "Ask again: it is being made on for a little while", COME_AGAIN);
    }

    /**
     * The answer, if it is made within the time, else how far it is; it is made on for the time of a lease.
     *
     * @param watcher names who waits, so that who asks again and again counts once
     */
    public Traced within(TraceQuestion question, Duration wait, String watcher) {
        TraceQuestion asked = known(question);
        String words = AskedQuestion.write(asked);
        String id = AnswerHash.ofQuestion(words);
        Duration longest = wait.compareTo(limits.longestWait()) < 0 ? wait : limits.longestWait();
        for (int again = 0; again < MOST_TURNS; again++) {
            Optional<AnswerHead> kept = heads.use(id);
            if (kept.isPresent()) {
                return Traced.answered(kept.get());
            }
            if (!makings.make(id, watch -> maker.make(id, asked, words, watch), longest, watcher)) {
                Makings.Progress progress = makings.progress(id);
                return Traced.made(
                        new TraceProgress(id, cutoff(asked), progress.stage(), progress.place(), progress.reached()));
            }
        }
        // made and forgotten again at once, as often as it was asked: everything kept is in use
        throw new Busy("Too many answers are in use at once", "Ask again in a little while", COME_AGAIN);
    }

    /** Says that who waited for an answer waits no longer; it is made no further if nobody else does. */
    public void stop(String id, String watcher) {
        makings.stop(id, watcher);
    }

    /** The same for an answer that is named by its question. */
    public void stop(TraceQuestion question, String watcher) {
        stop(AnswerHash.ofQuestion(AskedQuestion.write(known(question))), watcher);
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

    private TraceQuestion known(TraceQuestion question) {
        return new TraceQuestion(question.way(), question.root(), cutoff(question), question.at(), question.wider());
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
}
