package dev.sunthread.genealogy.answer;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.genealogy.AnswerLine;
import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.Root;
import dev.sunthread.genealogy.TraceQuestion;
import dev.sunthread.genealogy.Way;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a hash of an answer tells apart. */
class AnswerHashTests {

    @Test
    void emptyAnswersToTwoQuestionsDiffer() {
        assertThat(hash("A", 7, List.of()))
                .isEqualTo(hash("A", 7, List.of()))
                .isNotEqualTo(hash("B", 7, List.of()))
                .isNotEqualTo(hash("A", 8, List.of()));
    }

    @Test
    void theOrderOfLinesDoesNotCountAndTheirClassesDo() {
        AnswerLine one = line("r1", Certainty.CERTAIN);
        AnswerLine other = line("r2", Certainty.CERTAIN);
        assertThat(hash("A", 7, List.of(one, other)))
                .isEqualTo(hash("A", 7, List.of(other, one)))
                .isNotEqualTo(hash("A", 7, List.of(one, line("r2", Certainty.POSSIBLE))));
    }

    private static String hash(String lot, long cutoff, List<AnswerLine> lines) {
        TraceQuestion question = new TraceQuestion(Way.FORWARD, new Root.OfLot(lot), cutoff, null);
        return AnswerHash.of(AskedQuestion.write(question), lines);
    }

    private static AnswerLine line(String serial, Certainty ever) {
        return new AnswerLine(
                "UNIT",
                "receiver",
                "RCV",
                serial,
                null,
                ever,
                null,
                null,
                null,
                "",
                List.of(),
                "",
                null,
                null,
                List.of(),
                List.of());
    }
}
