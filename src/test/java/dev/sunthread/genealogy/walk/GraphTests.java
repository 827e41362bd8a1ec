package dev.sunthread.genealogy.walk;

import static dev.sunthread.genealogy.walk.History.installed;
import static dev.sunthread.genealogy.walk.History.use;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.genealogy.Question;
import dev.sunthread.kernel.TraceRef;
import java.util.List;
import org.junit.jupiter.api.Test;

class GraphTests {

    private static final TraceRef LOT = TraceRef.lot(1);
    private static final TraceRef CELL = TraceRef.unit(1);
    private static final TraceRef WALL = TraceRef.unit(2);
    private static final TraceRef OTHER = TraceRef.unit(4);
    private static final long END = Long.MAX_VALUE;

    @Test
    void asksForAFrontierAtOnceAndForEachNodeOnce() {
        History history = History.of(
                use(LOT, CELL, 1),
                use(LOT, OTHER, 1),
                installed(CELL, WALL, 2, END),
                installed(OTHER, WALL, 2, 3),
                installed(WALL, CELL, 4, 5));
        Walk walk = new Walk(history);
        walk.forward(List.of(LOT), Question.EVER);
        walk.forward(List.of(LOT), Question.NOW);
        assertThat(history.reads).isEqualTo(3);
        assertThat(history.asked).doesNotHaveDuplicates();
    }
}
