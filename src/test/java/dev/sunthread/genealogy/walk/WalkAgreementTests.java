package dev.sunthread.genealogy.walk;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.Question;
import dev.sunthread.kernel.TraceRef;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class WalkAgreementTests {

    private static final List<Question> QUESTIONS = Stream.concat(
                    Stream.of(Question.EVER, Question.NOW),
                    LongStream.of(0, 2, 3, 5, Histories.LAST + 2).mapToObj(Question::at))
            .toList();

    @Provide
    Arbitrary<History> histories() {
        return Histories.any();
    }

    @Property(tries = 10_000)
    void everyPathWrittenDownGivesTheAnswerOfTheWalk(@ForAll("histories") History history) {
        Walk walk = new Walk(history, Histories::start);
        for (TraceRef suspect : Histories.NODES) {
            EveryPath paths = new EveryPath(history, suspect, Histories.start(suspect));
            for (Question question : QUESTIONS) {
                Map<TraceRef, Arrival> answer = walk.forward(List.of(suspect), question);
                assertThat(spoken(answer)).isEqualTo(byBruteForce(paths, question));
            }
        }
    }

    @Property(tries = 10_000)
    void forwardAndBackwardAgreePerQuestionAndClass(@ForAll("histories") History history) {
        Walk walk = new Walk(history, Histories::start);
        for (Question question : QUESTIONS) {
            Map<String, Certainty> forward = new HashMap<>();
            Map<String, Certainty> backward = new HashMap<>();
            for (TraceRef node : Histories.NODES) {
                walk.forward(List.of(node), question)
                        .forEach((end, arrival) -> forward.put(node + " " + end, arrival.certainty()));
                walk.backward(List.of(node), question)
                        .forEach((start, arrival) -> backward.put(start + " " + node, arrival.certainty()));
            }
            assertThat(backward).isEqualTo(forward);
        }
    }

    @Property(tries = 2_000)
    void anAnswerAtAnInstantIsPartOfEverAndNoStronger(@ForAll("histories") History history) {
        Walk walk = new Walk(history, Histories::start);
        for (TraceRef suspect : Histories.NODES) {
            Map<TraceRef, Arrival> ever = walk.forward(List.of(suspect), Question.EVER);
            for (Question question : QUESTIONS) {
                walk.forward(List.of(suspect), question)
                        .values()
                        .forEach(arrival -> assertThat(ever.values())
                                .anyMatch(known -> known.node().equals(arrival.node())
                                        && known.certainty().isAtLeast(arrival.certainty())));
            }
        }
    }

    @Property(tries = 2_000)
    void eachPathLeadsFromASuspectToItsNodeUnderTheRule(@ForAll("histories") History history) {
        Walk walk = new Walk(history, Histories::start);
        for (TraceRef node : Histories.NODES) {
            for (Arrival arrival : walk.forward(List.of(node), Question.EVER).values()) {
                assertPathCounts(node, arrival.node(), arrival);
            }
            for (Arrival arrival : walk.backward(List.of(node), Question.EVER).values()) {
                assertPathCounts(arrival.node(), node, arrival);
            }
        }
    }

    @Property(tries = 2_000)
    void theOrderOfTheRecordsChangesNothing(@ForAll("histories") History history) {
        History reversed = new History();
        history.edges.forEach(edge -> reversed.edges.add(0, edge));
        for (TraceRef suspect : Histories.NODES) {
            List<TraceRef> only = List.of(suspect);
            assertThat(new Walk(reversed).forward(only, Question.EVER))
                    .isEqualTo(new Walk(history).forward(only, Question.EVER));
        }
    }

    private static void assertPathCounts(TraceRef start, TraceRef end, Arrival arrival) {
        History onlyThePath = History.of(arrival.path().toArray(Edge[]::new));
        EveryPath paths = new EveryPath(onlyThePath, start, Histories.start(start));
        assertThat(paths.reached(arrival.certainty(), Question.EVER)).containsKey(end);
    }

    private static Map<TraceRef, String> spoken(Map<TraceRef, Arrival> answer) {
        Map<TraceRef, String> spoken = new HashMap<>();
        answer.forEach((node, arrival) -> spoken.put(node, arrival.certainty() + " from " + arrival.instant()));
        return spoken;
    }

    private static Map<TraceRef, String> byBruteForce(EveryPath paths, Question question) {
        Map<TraceRef, String> answer = new HashMap<>();
        for (Certainty certainty : List.of(Certainty.UNPROVEN, Certainty.POSSIBLE, Certainty.CERTAIN)) {
            paths.reached(certainty, question)
                    .forEach((node, arrival) -> answer.put(node, certainty + " from " + arrival));
        }
        return answer;
    }
}
