package dev.sunthread.genealogy.answer;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.Way;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.GivenEdges;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.genealogy.walk.Reason;
import dev.sunthread.genealogy.walk.Suspect;
import dev.sunthread.genealogy.walk.Walk;
import dev.sunthread.kernel.TraceRef;
import java.util.List;
import org.junit.jupiter.api.Test;

class FlowCountTests {

    private static final TraceRef LOT = TraceRef.lot(1);
    private static final TraceRef RECEIVER = TraceRef.unit(1);
    private static final TraceRef WALL = TraceRef.unit(2);

    @Test
    void countsWhatIsReachedThroughAUnitThatWasBornTooLateToBeASuspectItself() {
        Reason reason = Reason.of("scanned", 1);
        List<Edge> edges = List.of(
                Edge.atOnce(LOT, RECEIVER, Certainty.CERTAIN, Moment.at(10), reason),
                Edge.installed(RECEIVER, WALL, Certainty.CERTAIN, Moment.at(5), Moment.at(20), reason));
        Walk walk = new Walk(new GivenEdges(edges), node -> node.equals(RECEIVER) ? 100 : Long.MIN_VALUE);
        Answer answer = new Answer(Way.BACKWARD, walk, List.of(Suspect.sinceEver(WALL)), null);
        assertThat(answer.ever(RECEIVER)).isNull();
        assertThat(FlowCount.of(answer, node -> node.kind().name()))
                .containsExactly(new FlowCount(null, null, "LOT", Certainty.CERTAIN, 1));
    }
}
