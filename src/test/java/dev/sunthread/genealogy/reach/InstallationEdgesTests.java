package dev.sunthread.genealogy.reach;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static dev.sunthread.genealogy.Certainty.POSSIBLE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class InstallationEdgesTests {

    private static final TraceRef CELL = TraceRef.unit(1);
    private static final TraceRef SPARE = TraceRef.unit(2);
    private static final TraceRef WALL = TraceRef.unit(3);
    private static final TraceRef OTHER = TraceRef.unit(4);
    private static final TraceRef BOLTS = TraceRef.lot(1);
    private static final TraceRef MORE_BOLTS = TraceRef.lot(2);

    private final Placements recorded = new Placements();

    @Test
    void endsAtTheEarliestRemovalAfterIt() {
        recorded.in(CELL, WALL, "1", 2);
        recorded.out(CELL, WALL, null, 9);
        recorded.out(CELL, WALL, "1", 5);
        assertThat(recorded.edges().get(0).certainty()).isEqualTo(CERTAIN);
        assertThat(recorded.edges().get(0).stayEnd()).isEqualTo(at(5));
    }

    @Test
    void leavesOtherPositionsAlone() {
        recorded.in(CELL, WALL, "1", 2);
        recorded.out(CELL, WALL, "2", 5);
        assertThat(recorded.edges()).extracting(Edge::stayEnd).containsExactlyInAnyOrder(Moment.NEVER, at(5));
    }

    @Test
    void lotTrackedPartIsCrossedAtOnceAndStaysUntilItsRemoval() {
        recorded.in(BOLTS, WALL, "1", 2);
        recorded.out(BOLTS, WALL, "1", 5);
        assertThat(recorded.edges().get(0).lastCrossing()).isEqualTo(at(2));
        assertThat(recorded.edges().get(0).stayEnd()).isEqualTo(at(5));
    }

    @Test
    void installationRecordedTwiceIsOneLongStay() {
        recorded.in(CELL, WALL, "1", 2);
        recorded.in(CELL, WALL, "1", 3);
        recorded.out(CELL, WALL, "1", 5);
        assertThat(recorded.edges()).extracting(Edge::stayEnd).containsExactly(at(5), at(5));
        assertThat(recorded.edges()).extracting(Edge::certainty).containsOnly(CERTAIN);
    }

    @Test
    void aUnitThatIsPutInAgainLaterWasPossiblyOutBefore() {
        recorded.in(CELL, WALL, "1", 0);
        recorded.in(CELL, WALL, null, 2_000_000);
        recorded.in(CELL, WALL, "1", 2_000_001);
        recorded.out(CELL, WALL, "1", 9_000_000);
        assertThat(recorded.edges()).extracting(Edge::certainty).containsExactlyInAnyOrder(POSSIBLE, CERTAIN, CERTAIN);
        assertThat(recorded.edges()).extracting(Edge::stayEnd).containsOnly(at(9_000_000));
    }

    @Test
    void aUnitThatIsPutInAgainAfterItsRemovalWasCertainlyThereUntilThen() {
        recorded.in(CELL, WALL, "1", 0);
        recorded.out(CELL, WALL, "1", 5_000_000);
        recorded.in(CELL, WALL, "1", 5_000_000);
        assertThat(recorded.edges()).extracting(Edge::certainty).containsOnly(CERTAIN);
    }

    @Test
    void removalWithoutInstallationProvesAPossibleStaySinceEver() {
        recorded.out(CELL, WALL, "1", 5);
        Edge edge = recorded.edges().get(0);
        assertThat(edge.certainty()).isEqualTo(POSSIBLE);
        assertThat(edge.begin()).isEqualTo(new Moment(Long.MIN_VALUE, 4));
        assertThat(edge.stayEnd()).isEqualTo(at(5));
    }

    /** The installation that the removal ended may be lost: then it was put back, and stays. */
    @Test
    void installedAndRemovedInOneMicrosecondMayHaveBeenThereBeforeAndMayStay() {
        recorded.in(CELL, WALL, "1", 5);
        recorded.out(CELL, WALL, "1", 5);
        assertThat(recorded.edges())
                .extracting(Edge::certainty, Edge::begin, Edge::stayEnd)
                .containsExactlyInAnyOrder(
                        tuple(CERTAIN, at(5), new Moment(5, Long.MAX_VALUE)),
                        tuple(POSSIBLE, new Moment(Long.MIN_VALUE, 4), at(5)));
    }

    @Test
    void takenOutAndPutBackInOneMicrosecondMayStillBeThere() {
        recorded.in(CELL, WALL, "1", 2);
        recorded.out(CELL, WALL, "1", 5);
        recorded.in(CELL, WALL, "1", 5);
        assertThat(recorded.edges()).extracting(Edge::stayEnd).containsExactly(at(5), new Moment(5, Long.MAX_VALUE));
    }

    @Test
    void removalAtAnUncertainMomentEndsTheStayThen() {
        recorded.in(CELL, WALL, "1", 2);
        recorded.out(CELL, WALL, "1", new Moment(5, 8));
        assertThat(recorded.edges().get(0).lastCrossing()).isEqualTo(new Moment(4, 7));
        assertThat(recorded.edges().get(0).stayEnd()).isEqualTo(new Moment(5, 8));
    }

    @Test
    void oneUnitInTwoPlacesIsPossibleInBothForItsWholeStays() {
        recorded.in(CELL, WALL, "1", 2);
        recorded.in(CELL, OTHER, "1", 5);
        assertThat(recorded.edges()).extracting(Edge::certainty).containsExactly(POSSIBLE, POSSIBLE);
        assertThat(recorded.edges()).extracting(Edge::stayEnd).containsExactly(Moment.NEVER, Moment.NEVER);
    }

    @Test
    void twoUnitsInOnePositionArePossible() {
        recorded.in(CELL, WALL, "1", 2);
        recorded.in(SPARE, WALL, "1", 5);
        assertThat(recorded.edges()).extracting(Edge::certainty).containsExactly(POSSIBLE, POSSIBLE);
    }

    @Test
    void piecesOfTwoLotsMayShareAPosition() {
        recorded.in(BOLTS, WALL, "1", 2);
        recorded.in(MORE_BOLTS, WALL, "1", 5);
        recorded.in(BOLTS, OTHER, "1", 5);
        assertThat(recorded.edges()).extracting(Edge::certainty).containsOnly(CERTAIN);
    }

    @Test
    void aMoveAtOneMomentIsNoContradiction() {
        recorded.in(CELL, WALL, "1", 2);
        recorded.out(CELL, WALL, "1", 5);
        recorded.in(CELL, OTHER, "1", 5);
        assertThat(recorded.edges()).extracting(Edge::certainty).containsExactly(CERTAIN, CERTAIN);
    }

    @Property(tries = 1_000)
    void theOrderOfArrivalChangesNothing(@ForAll Random random) {
        Placements placements = new Placements().anything(random, WALL);
        List<Edge> before = placements.edges();
        placements.shuffle(random);
        assertThat(placements.edges()).isEqualTo(before);
    }

    private static Moment at(long instant) {
        return Moment.at(instant);
    }
}
