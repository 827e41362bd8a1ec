package dev.sunthread.genealogy.position;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static dev.sunthread.genealogy.Certainty.POSSIBLE;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.genealogy.walk.Reason;
import dev.sunthread.kernel.TraceRef;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PositionTimelineTests {

    private static final TraceRef A = TraceRef.lot(1);
    private static final TraceRef B = TraceRef.lot(2);
    private static final TraceRef X = TraceRef.lot(3);

    private final Valve valve = new Valve();

    @Test
    void infersTheOneLotThatWasLoadedThroughout() {
        valve.on(A, 0).off(A, 10).used(5);
        assertThat(valve.at(5)).isEqualTo(Map.of(A, CERTAIN));
        assertThat(valve.timeline().candidates(new Use(Moment.at(5), Valve.ADHESIVE, null)))
                .singleElement()
                .satisfies(candidate -> assertThat(candidate.reason())
                        .isEqualTo(new Reason("inferred", Map.of("position", "valve 2", "from", "0", "to", "10"), 0)));
    }

    @Test
    void isNotSureWithinTheUncertaintyOfTheClock() {
        valve.on(A, Valve.ADHESIVE, Moment.within(10, 2)).off(A, 20);
        assertThat(valve.at(Moment.within(13, 2), null)).isEqualTo(Map.of(A, POSSIBLE));
        assertThat(valve.at(Moment.within(15, 2), null)).isEqualTo(Map.of(A, CERTAIN));
    }

    @Test
    void cartridgeChangedWithoutPurgeMayCarryOverForGood() {
        valve.on(A, 0).off(A, 10).on(B, 11).used(5, 12, 500);
        assertThat(valve.at(5)).isEqualTo(Map.of(A, CERTAIN));
        assertThat(valve.at(500)).isEqualTo(Map.of(A, POSSIBLE, B, CERTAIN));
    }

    @Test
    void lotThatWasScannedThoughNoChargeTellsItIsLeftBehindToo() {
        valve.on(A, 0).off(A, 10).scanned(B, 15).off(null, 20).on(X, 25);
        assertThat(valve.at(12)).isEqualTo(Map.of(A, POSSIBLE, B, POSSIBLE, X, POSSIBLE));
        assertThat(valve.at(30)).isEqualTo(Map.of(A, POSSIBLE, B, POSSIBLE, X, CERTAIN));
        valve.cleaned(22);
        assertThat(valve.at(30)).isEqualTo(Map.of(X, CERTAIN));
    }

    @Test
    void untoldLoadOfAStepThatBeganWithARecordedOneCameAfterThat() {
        valve.on(A, 0).used(5).off(A, 10).on(B, 12).usedThrough(9, 13);
        assertThat(valve.untold(5)).isEmpty();
        assertThat(valve.untold(11)).containsExactly(new Untold(Valve.ADHESIVE, new Moment(9, 13)));
        assertThat(valve.untold(20)).as("left behind").hasSize(1);
    }

    @Test
    void untoldLoadOfAStepThatBeganWithNoneWasThereSinceTheChangeBefore() {
        valve.on(A, 0).used(3).off(A, 4).on(B, 12).usedThrough(9, 13);
        assertThat(valve.untold(3)).isEmpty();
        assertThat(valve.untold(6)).containsExactly(new Untold(Valve.ADHESIVE, new Moment(9, 13)));
    }

    @Test
    void scanThatSpeaksAgainstTheOneChargeLeavesNothingSure() {
        valve.on(A, 0).scanned(B, 5);
        assertThat(valve.at(7)).isEqualTo(Map.of(A, POSSIBLE, B, POSSIBLE));
        assertThat(valve.at(Moment.at(5), B)).isEqualTo(Map.of(A, POSSIBLE, B, POSSIBLE));
    }

    @Test
    void cleanPointEndsTheCarryOverOfWhatHadLeft() {
        valve.on(X, Valve.PRIMER, Moment.at(-9))
                .off(X, -8)
                .on(A, 0)
                .off(A, 10)
                .cleaned(11)
                .on(B, 12)
                .used(5, 13);
        assertThat(valve.at(5)).isEqualTo(Map.of(X, POSSIBLE, A, CERTAIN));
        assertThat(valve.at(13)).isEqualTo(Map.of(B, CERTAIN));
    }

    /** The nameless discharge may be of either charge, the named one leaves the position empty. */
    @Test
    void lotThatIsNamedAsTakenOffHadLeftByThenWhateverCameOffBefore() {
        valve.on(A, 0)
                .on(A, null, Moment.at(1))
                .off(null, 2)
                .off(A, 3)
                .cleaned(4)
                .on(B, 5)
                .used(6);
        assertThat(valve.at(6)).isEqualTo(Map.of(B, CERTAIN));
    }

    @Test
    void cleanPointDropsNothingThatMayHaveBeenLoadedAcrossIt() {
        valve.on(A, 0).cleaned(5).on(B, 10).used(1, 8, 12, 14);
        assertThat(valve.at(14)).isEqualTo(Map.of(A, POSSIBLE, B, CERTAIN));
    }

    @Test
    void useInTheGapAfterACleanPointKeepsTheLotBefore() {
        valve.on(A, 0).off(A, 10).cleaned(11).on(B, 20).used(5, 15, 25);
        assertThat(valve.at(15)).isEqualTo(Map.of(A, POSSIBLE, B, POSSIBLE));
        assertThat(valve.at(25)).isEqualTo(Map.of(A, POSSIBLE, B, CERTAIN));
    }

    @Test
    void gapBetweenDischargeAndChargeMakesBothNeighboursPossible() {
        valve.on(A, 0).off(A, 10).on(B, 20).off(B, 30);
        for (long inAGap : new long[] {10, 15, 20, 30, 99}) {
            assertThat(valve.at(inAGap))
                    .as("at %d", inAGap)
                    .containsOnlyKeys(A, B)
                    .doesNotContainValue(CERTAIN);
        }
        assertThat(valve.at(-1)).isEqualTo(Map.of(A, POSSIBLE));
    }

    @Test
    void changeWithoutDischargeLiesBetweenTheUsesAroundIt() {
        valve.on(A, 0).on(B, 10).used(3, 6, 8, 12, 14, 16);
        assertThat(valve.at(6)).isEqualTo(Map.of(A, CERTAIN));
        assertThat(valve.at(8)).isEqualTo(Map.of(A, POSSIBLE, B, POSSIBLE));
        assertThat(valve.at(12)).isEqualTo(Map.of(A, POSSIBLE, B, POSSIBLE));
        assertThat(valve.at(14)).isEqualTo(Map.of(A, POSSIBLE, B, CERTAIN));
    }

    @Test
    void dischargeOfAnotherLotLeavesBothPossibleSinceTheCharge() {
        valve.on(A, 0).off(X, 10).on(B, 20);
        assertThat(valve.at(5)).isEqualTo(Map.of(A, POSSIBLE, X, POSSIBLE));
        assertThat(valve.at(25)).isEqualTo(Map.of(A, POSSIBLE, X, POSSIBLE, B, CERTAIN));
    }

    @Test
    void secondDischargeInARowProvesAnUnrecordedCharge() {
        valve.on(A, 0).off(A, 10).off(X, 20).on(B, 30);
        assertThat(valve.at(5)).isEqualTo(Map.of(A, CERTAIN));
        assertThat(valve.at(15)).isEqualTo(Map.of(A, POSSIBLE, B, POSSIBLE, X, POSSIBLE));
    }

    @Test
    void lotOfAnotherOrAnUnknownItemIsAtMostPossible() {
        valve.on(A, Valve.PRIMER, Moment.at(0))
                .off(A, 10)
                .on(B, null, Moment.at(11))
                .off(B, 20);
        assertThat(valve.at(5)).isEqualTo(Map.of(A, POSSIBLE));
        assertThat(valve.at(15)).isEqualTo(Map.of(A, POSSIBLE, B, POSSIBLE));
    }

    @Test
    void scanIsCertainWhereTheLotMayHaveBeenLoaded() {
        valve.on(A, 0).off(A, 10).on(B, 20).off(B, 30);
        assertThat(valve.at(Moment.at(15), A)).isEqualTo(Map.of(A, CERTAIN, B, POSSIBLE));
        assertThat(valve.at(Moment.at(25), B)).isEqualTo(Map.of(A, POSSIBLE, B, CERTAIN));
    }

    @Test
    void scanThatDisagreesLeavesItAndTheLoadedOnePossible() {
        valve.on(A, 0).off(A, 10).on(B, 11).off(B, 20);
        assertThat(valve.at(Moment.at(15), X)).isEqualTo(Map.of(A, POSSIBLE, B, POSSIBLE, X, POSSIBLE));
        assertThat(valve.at(Moment.at(15), A)).isEqualTo(Map.of(A, POSSIBLE, B, POSSIBLE));
    }

    @Test
    void stepThatSpansAChangeMayHaveUsedEitherLotForEachOfItsUnitsWhicheverWasScanned() {
        valve.on(A, 0).off(A, 15).on(B, 15).off(B, 30);
        assertThat(valve.at(new Moment(10, 20), A)).isEqualTo(Map.of(A, POSSIBLE, B, POSSIBLE));
        assertThat(valve.at(new Moment(10, 20), B)).isEqualTo(Map.of(A, POSSIBLE, B, POSSIBLE));
        assertThat(valve.at(new Moment(5, 14), A)).isEqualTo(Map.of(A, CERTAIN));
        assertThat(valve.at(new Moment(5, 15), A)).isEqualTo(Map.of(A, POSSIBLE, B, POSSIBLE));
        assertThat(valve.at(new Moment(15, 25), B)).isEqualTo(Map.of(A, POSSIBLE, B, CERTAIN));
        assertThat(valve.at(new Moment(15, 25), A)).isEqualTo(Map.of(A, POSSIBLE, B, POSSIBLE));
        assertThat(valve.at(new Moment(5, 15), B)).isEqualTo(Map.of(A, POSSIBLE, B, POSSIBLE));
    }

    @Test
    void stepInWhichMoreOfTheSameLotWasLoadedUsedThatLot() {
        valve.on(A, 0).off(null, 15).on(A, 16);
        assertThat(valve.at(new Moment(10, 20), A)).isEqualTo(Map.of(A, CERTAIN));
    }

    @Test
    void stepInWhichItsLotCameOffIsNotShownToHaveUsedThatLotToItsEnd() {
        valve.on(A, 0).off(A, 15).on(B, 40);
        assertThat(valve.at(new Moment(10, 20), A)).isEqualTo(Map.of(A, POSSIBLE, B, POSSIBLE));
    }

    @Test
    void lotScannedOnAgainGoesOnWithoutAChange() {
        valve.on(A, 0).on(A, 0).on(A, 5).off(A, 10).used(1, 4, 6);
        assertThat(valve.at(4)).isEqualTo(Map.of(A, CERTAIN));
        assertThat(valve.at(6)).isEqualTo(Map.of(A, CERTAIN));
    }

    @Test
    void changeRecordedAtOneMomentIsASwap() {
        valve.on(A, 0).off(A, 10).on(B, 10).off(B, 20);
        assertThat(valve.at(15)).isEqualTo(Map.of(A, POSSIBLE, B, CERTAIN));
    }

    @Test
    void twoLotsChargedAtOneMomentAreBothPossible() {
        valve.on(A, 0).on(B, 0).used(1, 2, 3);
        assertThat(valve.at(2)).isEqualTo(Map.of(A, POSSIBLE, B, POSSIBLE));
    }
}
