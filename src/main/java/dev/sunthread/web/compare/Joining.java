package dev.sunthread.web.compare;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.genealogy.AnswerHead;
import dev.sunthread.genealogy.TraceLimits;
import dev.sunthread.genealogy.TraceProgress;
import dev.sunthread.genealogy.TraceQuestion;
import dev.sunthread.genealogy.Traced;
import dev.sunthread.genealogy.Traces;
import dev.sunthread.kernel.Recorder;
import dev.sunthread.kernel.Table;
import dev.sunthread.web.Paged;
import dev.sunthread.web.compare.JoinedAnswer.Line;
import dev.sunthread.web.compare.JoinedAnswer.Part;
import dev.sunthread.web.compare.JoinedAnswer.Side;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Asks several questions at one cut-off, and joins their answers. */
@Component
class Joining {

    private static final int A_PAGE = 50;

    private final Traces traces;
    private final TraceLimits limits;
    private final Recorder recorder;
    private final AnswerDifferences kept;
    private final JoinedAnswers answers;

    Joining(Traces traces, TraceLimits limits, Recorder recorder, AnswerDifferences kept, JoinedAnswers answers) {
        this.traces = traces;
        this.limits = limits;
        this.recorder = recorder;
        this.kept = kept;
        this.answers = answers;
    }

    /** The answers, in the order of the questions, all at the cut-off of the first. */
    List<AnswerHead> ask(JoinedRequest asked) {
        String questions = String.valueOf(asked.of());
        List<AnswerHead> heads = new ArrayList<>();
        Long cutoff = asked.cutoff();
        for (TraceQuestion question : JoinedQuestions.read(questions)) {
            AnswerHead head = traces.ask(at(cutoff, question));
            cutoff = head.question().cutoff();
            heads.add(head);
        }
        return heads;
    }

    /** How far the first is that a page does not wait for; nothing once all are made. The others are begun meanwhile. */
    Optional<TraceProgress> making(JoinedRequest asked) {
        TraceProgress first = null;
        Long cutoff = asked.cutoff();
        for (TraceQuestion one : JoinedQuestions.read(String.valueOf(asked.of()))) {
            Traced traced =
                    traces.within(at(cutoff, one), first == null ? limits.pageWait() : Duration.ZERO, watcher());
            AnswerHead made = traced.answer();
            TraceProgress making = traced.making();
            if (making != null) {
                first = first == null ? making : first;
                cutoff = making.cutoff();
            } else if (made != null) {
                cutoff = made.question().cutoff();
            }
        }
        return Optional.ofNullable(first);
    }

    /** Waits for none of them any longer. */
    void stop(JoinedRequest asked) {
        JoinedQuestions.read(String.valueOf(asked.of()))
                .forEach(one -> traces.stop(at(asked.cutoff(), one), watcher()));
    }

    private static TraceQuestion at(@Nullable Long cutoff, TraceQuestion one) {
        return new TraceQuestion(one.way(), one.root(), cutoff, null, one.wider());
    }

    private String watcher() {
        return "page of " + recorder.mark();
    }

    /** What they say together. */
    JoinedAnswer join(JoinedRequest asked, List<AnswerHead> heads) {
        List<String> ids = heads.stream().map(AnswerHead::id).toList();
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < heads.size(); i++) {
            AnswerHead head = heads.get(i);
            KeptAnswer answer = kept.find(head.id()).orElseThrow();
            parts.add(new Part(letter(i), answer, head.notes(), JoinedQuestions.first(String.valueOf(asked.of()), i)));
        }
        return new JoinedAnswer(
                parts,
                Objects.requireNonNull(heads.get(0).question().cutoff()),
                answers.counts(ids),
                Paged.of(
                        asked.page(),
                        A_PAGE,
                        answers.total(ids, asked),
                        (offset, most) -> answers.lines(ids, asked, offset, most)));
    }

    /** How many records were sealed since. */
    long since(List<AnswerHead> heads) {
        return traces.since(heads.get(0));
    }

    /** Every line that the choice leaves, with what each answer says. */
    Table<Line> table(JoinedRequest asked, List<AnswerHead> heads) {
        List<String> ids = heads.stream().map(AnswerHead::id).toList();
        List<Table.Column<Line>> columns = new ArrayList<>(List.of(
                column("column.level", Line::level),
                column("column.item", Line::item),
                column("column.name", Line::name),
                column("column.issuer", Line::issuer),
                column("column.class", Line::certainty),
                column("column.where", Line::place)));
        for (int i = 0; i < ids.size(); i++) {
            int nth = i;
            columns.add(column("class " + letter(i), line -> side(line, nth, Side::certainty)));
            columns.add(column("reason " + letter(i), line -> side(line, nth, Side::reason)));
        }
        return new Table<>(
                "joined",
                columns,
                each -> answers.lines(ids, asked, 0, Integer.MAX_VALUE).forEach(each));
    }

    private static @Nullable String side(Line line, int nth, Function<Side, @Nullable String> value) {
        return value.apply(line.sides().get(nth));
    }

    private static String letter(int nth) {
        return String.valueOf((char) ('A' + nth));
    }
}
