package dev.sunthread.genealogy.walk;

import static dev.sunthread.genealogy.walk.History.installed;
import static dev.sunthread.genealogy.walk.History.run;
import static dev.sunthread.genealogy.walk.History.use;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.Question;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.List;
import org.junit.jupiter.api.Test;

class WalkTests {

    private static final TraceRef LOT = TraceRef.lot(1);
    private static final TraceRef MIX = TraceRef.lot(2);
    private static final TraceRef CELL = TraceRef.unit(1);
    private static final TraceRef WALL = TraceRef.unit(2);
    private static final TraceRef MODULE = TraceRef.unit(3);
    private static final TraceRef OTHER = TraceRef.unit(4);
    private static final TraceRef OVEN = new TraceRef(TraceKind.CURE_RUN, 1);
    private static final long END = Long.MAX_VALUE;

    @Test
    void followsAChainToItsEnd() {
        History chain = History.of(use(LOT, CELL, 1), installed(CELL, WALL, 2, END), installed(WALL, MODULE, 3, END));
        assertThat(chain.reached(LOT, Question.EVER)).containsExactly(LOT, CELL, WALL, MODULE);
        assertThat(chain.arrival(LOT, MODULE).path()).containsExactlyElementsOf(chain.edges);
    }

    @Test
    void takesTheEarlierSideOfADiamond() {
        History diamond = History.of(
                use(LOT, CELL, 1), use(LOT, WALL, 5), installed(CELL, MODULE, 6, END), installed(WALL, MODULE, 5, END));
        assertThat(diamond.arrival(LOT, MODULE).instant()).isEqualTo(5);
        assertThat(diamond.arrival(LOT, MODULE).path()).extracting(Edge::from).containsExactly(LOT, WALL);
    }

    @Test
    void prefersFewerEdgesAmongEqualArrivals() {
        History history = History.of(use(LOT, MIX, 1), use(MIX, CELL, 5), use(LOT, CELL, 5));
        assertThat(history.arrival(LOT, CELL).path()).hasSize(1);
    }

    @Test
    void findsTheUnitsThatShareALot() {
        History shared = History.of(use(LOT, CELL, 1), use(LOT, WALL, 2), use(MIX, OTHER, 1));
        assertThat(shared.reached(LOT, Question.EVER)).containsExactly(LOT, CELL, WALL);
    }

    @Test
    void swappedOutComponentIsEverInBothAndNowInTheSecond() {
        History swap = History.of(use(LOT, CELL, 1), installed(CELL, WALL, 2, 5), installed(CELL, OTHER, 6, END));
        assertThat(swap.reached(LOT, Question.EVER)).contains(WALL, OTHER);
        assertThat(swap.reached(LOT, Question.NOW)).doesNotContain(WALL).contains(OTHER);
        assertThat(swap.reached(LOT, Question.at(4))).contains(WALL).doesNotContain(OTHER);
        assertThat(swap.reached(LOT, Question.at(5))).doesNotContain(WALL, OTHER);
    }

    @Test
    void lotUsedBeforeItWasBlendedIntoStaysCleanForThoseUses() {
        History blend = History.of(use(MIX, CELL, 3), use(LOT, MIX, 4), use(MIX, WALL, 4), use(MIX, OTHER, 5));
        assertThat(blend.reached(LOT, Question.EVER)).containsExactly(LOT, MIX, WALL, OTHER);
    }

    @Test
    void badLoadReachesWhatIsTakenOutLaterButNotWhatIsPutInAfterwards() {
        History load = History.of(
                run(OVEN, WALL, 1, 4),
                use(LOT, CELL, 6),
                installed(CELL, WALL, 0, 5),
                installed(WALL, CELL, 0, 5),
                installed(WALL, OTHER, 0, 1));
        assertThat(load.reached(OVEN, Question.EVER)).contains(WALL, CELL).doesNotContain(OTHER);
    }

    @Test
    void aRunStillReachesWhatArrivedBeforeItsEnd() {
        History rework = History.of(use(LOT, CELL, 5), run(CELL, WALL, 1, 5), run(CELL, OTHER, 1, 4));
        assertThat(rework.reached(LOT, Question.EVER)).contains(WALL).doesNotContain(OTHER);
    }

    @Test
    void reworkLoopEndsAndReachesEverythingOnIt() {
        History loop = History.of(
                use(LOT, CELL, 1),
                installed(CELL, WALL, 2, 3),
                use(WALL, MIX, 4),
                use(MIX, CELL, 5),
                installed(CELL, WALL, 6, END),
                installed(WALL, MODULE, 7, END));
        assertThat(loop.reached(LOT, Question.NOW)).contains(CELL, WALL, MODULE);
        assertThat(loop.reached(MIX, Question.EVER)).containsExactly(MIX, CELL, WALL, MODULE);
    }

    @Test
    void lateFirstVisitHidesNoEarlierArrival() {
        History history =
                History.of(use(LOT, CELL, 9), use(LOT, MIX, 1), use(MIX, CELL, 2), installed(CELL, WALL, 3, 5));
        assertThat(history.reached(LOT, Question.EVER)).contains(WALL);
    }

    @Test
    void weakEarlyArrivalHidesNoCertainLateOne() {
        Edge guessed = use(LOT, CELL, 1).atMost(Certainty.POSSIBLE);
        History history = History.of(guessed, use(LOT, CELL, 4), installed(CELL, WALL, 2, 3), use(CELL, OTHER, 6));
        assertThat(history.arrival(LOT, WALL).certainty()).isEqualTo(Certainty.POSSIBLE);
        assertThat(history.arrival(LOT, OTHER).certainty()).isEqualTo(Certainty.CERTAIN);
        assertThat(history.arrival(LOT, CELL).instant()).isEqualTo(4);
    }

    @Test
    void missingScanIsUnprovenAndKept() {
        History gap = History.of(use(LOT, CELL, 1).atMost(Certainty.UNPROVEN), installed(CELL, WALL, 2, END));
        assertThat(gap.arrival(LOT, WALL).certainty()).isEqualTo(Certainty.UNPROVEN);
    }

    @Test
    void doesNotGuessThatTheFirstLotInWasTheFirstOut() {
        History twoLots = History.of(
                use(LOT, CELL, 5).atMost(Certainty.POSSIBLE), use(MIX, CELL, 5).atMost(Certainty.POSSIBLE));
        assertThat(new Walk(twoLots).backward(List.of(CELL), Question.EVER)).containsKeys(LOT, MIX);
    }

    @Test
    void clockUncertaintyMakesACloseCallPossible() {
        Edge blend = Edge.atOnce(LOT, MIX, Certainty.CERTAIN, Moment.within(10, 2), History.TOLD);
        Edge use = Edge.atOnce(MIX, CELL, Certainty.CERTAIN, Moment.within(9, 2), History.TOLD);
        assertThat(History.of(blend, use).arrival(LOT, CELL).certainty()).isEqualTo(Certainty.POSSIBLE);
    }

    @Test
    void suspectUnitReachesOnlyFromItsStartOn() {
        History history = History.of(installed(CELL, WALL, 1, 5), installed(CELL, OTHER, 6, END));
        assertThat(new Walk(history).forwardFrom(List.of(new Suspect(CELL, 5, Certainty.CERTAIN)), Question.EVER))
                .containsOnlyKeys(CELL, OTHER);
        assertThat(new Walk(history, node -> 5).backward(List.of(WALL), Question.EVER))
                .doesNotContainKey(CELL);
    }
}
