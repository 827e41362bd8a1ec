package dev.sunthread.genealogy;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static dev.sunthread.genealogy.Certainty.POSSIBLE;
import static dev.sunthread.genealogy.Certainty.UNPROVEN;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Small histories of units in their places, on trays, in shipments and at their birth. */
class SmallHistoriesOfPlacesTests extends SmallHistories {

    /** Lost: the removal of r1 from w1, before it went into w2. */
    @Test
    void aReceiverThatIsToldInAnotherWallIsNotCertainInTheFirstUntilThen() {
        install("08:00", "r1", "w1");
        glue("11:00", "w1", "A");
        install("12:00", "r1", "w2");
        truth("A", "w1");
    }

    /** Lost: that r2 went into w1 behind r1; w1 itself is shipped a second time. */
    @Test
    void aReceiverThatWasPutIntoAWallBetweenItsShipmentsUnseenIsInTheSecond() {
        places();
        plant.bondWithLot("07:00", "r2", "B");
        install("08:00", "r1", "w1");
        plant.ship("09:00", "S-1", "Sunny Site", "WALL w1");
        plant.takeBack("10:00", "Sunny Site", "WALL w1");
        remove("11:00", "r1", "w1");
        plant.ship("13:00", "S-2", "Other Site", "WALL w1");
        truth("B", "r2", "w1");
    }

    /** Lost: that r2 went into w1 when the walls exchanged their receivers. */
    @Test
    void aReceiverThatCameFromAnotherWallIsReachedThoughItsInstallationIsLost() {
        places();
        install("08:00", "r1", "w1");
        install("08:00", "r2", "w2");
        glue("09:00", "w1", "A");
        remove("10:00", "r1", "w1");
        remove("10:00", "r2", "w2");
        install("10:30", "r1", "w2");
        glue("11:00", "w1", "B");
        install("12:00", "w1", "m1");
        truth("A", "r1", "w1", "w2", "m1");
        truth("B", "w1", "r2", "m1");
    }

    /** Lost: both installations of the exchange. */
    @Test
    void receiversThatWereExchangedAreReachedThoughNeitherInstallationIsTold() {
        places();
        install("08:00", "r1", "w1");
        install("08:00", "r2", "w2");
        remove("10:00", "r1", "w1");
        remove("10:00", "r2", "w2");
        glue("11:00", "w1", "A");
        glue("11:00", "w2", "B");
        install("12:00", "w1", "m1");
        install("12:00", "w2", "m2");
        truth("A", "w1", "r2", "m1");
        truth("B", "w2", "r1", "m2");
    }

    /** Lost: that r1 went into w1, which was in two modules. */
    @Test
    void anUnrecordedReceiverIsReachedInBothModulesThatItsWallWasIn() {
        places();
        install("08:00", "w1", "m1");
        cure("09:00", "09:30", "C-1", "m1");
        remove("10:00", "w1", "m1");
        install("11:00", "w1", "m2");
        cure("12:00", "12:30", "C-2", "m2");
        truthOfRun("C-1", "m1", "w1", "r1", "m2");
        truthOfRun("C-2", "m2", "w1", "r1");
    }

    /** Lost: that r1 went into w1, and that w1 went into m1; the later work on w1 demands its receiver. */
    @Test
    void whatIsDoneToTheOutermostParentReachesThroughTwoUnrecordedPlaces() {
        places();
        route("WALL", op("seal", "RCV"), op("coat"));
        step("08:00", "seal", "w1");
        step("08:30", "coat", "w1");
        glue("10:00", "m1", "B");
        cure("10:10", "10:40", "C-1", "m1");
        install("12:00", "m1", "p1");
        truth("B", "m1", "w1", "r1", "p1");
        truthOfRun("C-1", "m1", "w1", "r1", "p1");
    }

    /** Lost: that m1 went back into p1. */
    @Test
    void aModuleThatWentBackIntoItsPanelUnseenIsReached() {
        places();
        install("08:00", "m1", "p1");
        remove("10:00", "m1", "p1");
        glue("11:00", "p1", "A");
        glue("13:00", "p1", "B");
        plant.ship("14:00", "S-1", "Sunny Site", "PANEL p1");
        truth("A", "p1");
        truth("B", "p1", "m1");
    }

    /** Lost: the installation of r2 behind r1; its removal is told. */
    @Test
    void aRemovalProvesAReceiverWhoseInstallationIsLost() {
        places();
        install("08:00", "r1", "w1");
        remove("10:00", "r1", "w1");
        glue("11:00", "w1", "B");
        remove("12:00", "r2", "w1");
        truth("B", "w1", "r2");
    }

    /** Lost: that r1 went into w1. The bond on r1 at 10:00 acted on m1 and all in it; r3 came later. */
    @Test
    void anActOnAnUnrecordedChildReachesTheOutermostParentAndAllInItThen() {
        supply.structure("WALL", "1 RCV");
        install("08:00", "r2", "w1", "2");
        install("09:00", "w1", "m1");
        glue("10:00", "r1", "B");
        install("11:00", "r3", "w1", "3");
        truth("B", "r1", "w1", "m1", "r2");
    }

    /** Lost: that r1 went into w1, and w1 into m1; the cure named r1, m1 was shipped in p1. */
    @Test
    void aRunOnAnUnrecordedChildReachesUpThroughTwoUnrecordedPlaces() {
        places();
        route("WALL", op("seal", "RCV"), op("coat"));
        step("08:00", "seal", "w1");
        step("08:30", "coat", "w1");
        cure("10:00", "10:30", "C-1", "r1");
        install("12:00", "m1", "p1");
        truthOfRun("C-1", "r1", "w1", "m1", "p1");
    }

    /** Lost: that w1 went into m1. The act on r1, told in w1, acted on m1 and on r2 in w1. */
    @Test
    void anActOnAReceiverReachesTheModuleThatItsWallWentIntoUnseen() {
        places();
        install("07:00", "r1", "w1");
        install("07:00", "r2", "w1", "2");
        glue("10:00", "r1", "B");
        install("12:00", "m1", "p1");
        truth("B", "r1", "w1", "r2", "m1", "p1");
    }

    /** Lost: that r1 went into w1 before the shipment; the removal behind it is told. */
    @Test
    void aReceiverThatARemovalProvesWasInTheShipmentBefore() {
        places();
        plant.bondWithLot("07:00", "r1", "A");
        install("08:10", "w1", "m1");
        install("08:20", "m1", "p1");
        plant.ship("09:00", "S-1", "Sunny Site", "PANEL p1");
        plant.takeBack("10:00", "Sunny Site", "PANEL p1");
        remove("11:00", "r1", "w1");
        truth("A", "r1", "w1", "m1", "p1");
        assertThat(asked.lot("A").atShipment()).containsKeys("r1", "w1", "m1", "p1");
        assertThat(asked.lot("A").now()).doesNotContainEntry("p1", CERTAIN);
    }

    /** Truly r1 went into w1 unseen, or stayed behind: no record tells; r2 is told in w2. */
    @Test
    void whatIsPerhapsInAShipmentIsNoMoreThanThatThereThoughItIsCertainByItself() {
        places();
        cure("07:00", "07:30", "C-1", "r1", "r2");
        install("08:00", "r2", "w2");
        install("08:10", "w1", "m1");
        install("08:10", "w2", "m2");
        install("08:20", "m1", "p1");
        plant.ship("09:00", "S-1", "Sunny Site", "PANEL p1", "MOD m2");
        plant.say("scrap", "10:00", Map.of("units", List.of(unit("r1")), "why", "cracked"));
        assertThat(asked.scope(new Scope.CureRun("C-1")).ever()).containsEntry("r1", CERTAIN);
        assertThat(asked.scope(new Scope.CureRun("C-1")).atShipment())
                .containsEntry("r1", UNPROVEN)
                .containsEntry("r2", CERTAIN);
        assertThat(asked.unit("RCV", "r1").atShipment()).containsEntry("C-1", UNPROVEN);
        assertThat(asked.unit("RCV", "r2").atShipment()).containsEntry("C-1", CERTAIN);
        assertThat(asked.unit("PANEL", "p1").atShipment()).containsEntry("r1", UNPROVEN);
    }

    /** Two records tell r1 in two walls; one of them was shipped. */
    @Test
    void whatIsPossiblyInAShipmentIsPossibleThere() {
        cure("07:00", "07:30", "C-1", "r1");
        install("08:00", "r1", "w1");
        install("08:10", "r1", "w2");
        plant.ship("09:00", "S-1", "Sunny Site", "WALL w1");
        assertThat(asked.scope(new Scope.CureRun("C-1")).atShipment()).containsEntry("r1", POSSIBLE);
        assertThat(asked.unit("RCV", "r1").atShipment()).containsEntry("C-1", POSSIBLE);
    }

    @Test
    void aBirthThatOneStationTellsTwiceWithinTwoSecondsLeavesOneBody() {
        bornAt("2026-03-02T06:00:10+01:00", "r1", "BOND");
        bornAt("2026-03-02T06:00:12+01:00", "r1", "BOND");
        born("r9");
        bornAt("2026-03-02T06:00:10+01:00", "r9", "BOND");
        bornAt("2026-03-02T06:00:12+01:00", "r9", "BOND");
        plant.bondWithLot("08:00", "r9", "A");
        assertThat(asked.lot("A").ever()).containsEntry("r9", CERTAIN);
    }

    /** Two bodies: the one had A, the other B and then w1. */
    @Test
    void aSerialThatTwoStationsGaveLeavesNothingCertain() {
        plant.station("OTHER", "10", "V1");
        born("r9");
        bornAt("2026-03-02T06:00:10+01:00", "r9", "BOND");
        bornAt("2026-03-02T06:00:11+01:00", "r9", "OTHER");
        plant.bondWithLot("08:00", "r9", "A");
        plant.bondWithLot("08:10", "r9", "B");
        install("09:00", "r9", "w1");
        truth("B", "r9", "w1");
        assertThat(asked.lot("A").ever()).containsEntry("r9", POSSIBLE).containsEntry("w1", POSSIBLE);
    }

    @Test
    void aSerialThatOneStationGaveThreeSecondsLaterIsTwoBodies() {
        born("r9");
        bornAt("2026-03-02T06:00:10+01:00", "r9", "BOND");
        bornAt("2026-03-02T06:00:13+01:00", "r9", "BOND");
        plant.bondWithLot("08:00", "r9", "A");
        assertThat(asked.lot("A").ever()).containsEntry("r9", POSSIBLE);
    }

    /** Lost: that r1 was put on T1; the coat demands its cure. */
    @Test
    void aUnitWhoseLoadIsLostMayHaveBeenInTheRunOfTheTray() {
        cured();
        plant.bondWithLot("08:00", "r1", "A");
        ovens.load("08:30", "T1", "RCV r2");
        ovens.cure("09:00", "09:30", "C-1", List.of(), List.of("T1"));
        step("12:00", "coat", "r1");
        truthOfRun("C-1", "r1", "r2");
    }

    /** Lost: that r1 was taken off T1, before it went onto T2. */
    @Test
    void aUnitWhoseUnloadIsLostIsNotCertainInTheNextRun() {
        ovens.load("08:00", "T1", "RCV r1", "RCV r2");
        ovens.load("08:45", "T2", "RCV r1");
        ovens.cure("09:00", "09:20", "C-1", List.of(), List.of("T1"));
        ovens.cure("09:00", "09:20", "C-2", List.of(), List.of("T2"));
        ovens.unload("09:30", "T1");
        truthOfRun("C-1", "r2");
        truthOfRun("C-2", "r1");
        assertThat(asked.scope(new Scope.CureRun("C-1")).ever())
                .containsEntry("r1", POSSIBLE)
                .containsEntry("r2", CERTAIN);
    }

    /** The same, r1 taken off T2 within what the clock may be wrong by. */
    @Test
    void aUnitThatWasOnAnotherTrayForAMomentIsNotCertainOnTheFirst() {
        ovens.load("08:00", "T1", "RCV r1", "RCV r2");
        door("carrier-load", "2026-03-10T08:45:00+01:00", tray("T2", "loads"));
        door("carrier-unload", "2026-03-10T08:45:05+01:00", tray("T2", "unloads"));
        ovens.cure("09:00", "09:20", "C-1", List.of(), List.of("T1"));
        ovens.unload("09:30", "T1");
        truthOfRun("C-1", "r2");
    }

    /** Lost: that r1 was taken off T1, and put on T2. */
    @Test
    void aUnitThatWasTakenOffAnotherTrayIsNotCertainOnTheFirst() {
        ovens.load("08:00", "T1", "RCV r1", "RCV r2");
        ovens.unload("08:45", "T2", "RCV r1");
        ovens.cure("09:00", "09:20", "C-1", List.of(), List.of("T1"));
        ovens.unload("09:30", "T1");
        truthOfRun("C-1", "r2");
    }

    /** Lost: that T1 was taken off the rack K1, before it went onto K2. */
    @Test
    void aTrayWhoseUnloadIsLostIsNotCertainOnItsFirstRack() {
        ovens.load("08:00", "T1", "RCV r1");
        ovens.load("08:10", "K1", "T1");
        ovens.load("08:45", "K2", "T1");
        ovens.cure("09:00", "09:20", "C-1", List.of(), List.of("K1"));
        ovens.cure("09:00", "09:20", "C-2", List.of(), List.of("K2"));
        ovens.unload("09:30", "K1");
        ovens.unload("10:00", "T1");
        assertThat(asked.scope(new Scope.CureRun("C-1")).ever()).isEqualTo(Map.of("r1", POSSIBLE));
        truthOfRun("C-2", "r1");
    }

    /** Lost: that r1, r2 and r3 were taken off T1. */
    @Test
    void aUnitThatWasInstalledShippedOrScrappedSinceIsNotCertainOnItsTray() {
        ovens.load("08:00", "T1", "RCV r1", "RCV r2", "RCV r3", "WALL w2");
        install("08:45", "r1", "w1");
        plant.ship("08:45", "S-1", "Sunny Site", "RCV r2");
        plant.say("scrap", "08:45", Map.of("units", List.of(unit("r3")), "why", "cracked"));
        ovens.cure("09:00", "09:20", "C-1", List.of(), List.of("T1"));
        ovens.unload("09:30", "T1");
        truthOfRun("C-1", "w2");
        assertThat(asked.scope(new Scope.CureRun("C-1")).ever())
                .containsEntry("w2", CERTAIN)
                .containsKeys("r1", "r2", "r3");
    }

    /** Lost: that r1 was taken off its first place on T1, and cured elsewhere, before it came back. */
    @Test
    void aUnitThatWasLoadedTwiceOnOneTrayIsNotCertainThereMeanwhile() {
        ovens.load("08:00", "T1", "RCV r1", "RCV r2");
        ovens.cure("08:20", "08:40", "C-1", List.of(), List.of("T1"));
        ovens.load("08:45", "T1", "RCV r1");
        ovens.cure("09:00", "09:20", "C-2", List.of(), List.of("T1"));
        ovens.unload("09:30", "T1");
        truthOfRun("C-1", "r2");
        truthOfRun("C-2", "r1", "r2");
    }

    private Map<String, Object> tray(String carrier, String what) {
        return Map.of("carrier", carrier, what, List.of(Map.of("unit", unit("r1"))), "station", "BOND");
    }

    /** Lost: that T1 was taken off the rack, r1 on it; all off the rack is told. */
    @Test
    void aTrayInARackIsLeftByWhatWasTakenOffUnseenAndReachedUntilThen() {
        ovens.load("08:00", "T1", "RCV r1");
        ovens.load("08:10", "RACK", "T1");
        ovens.cure("08:20", "08:40", "C-1", List.of(), List.of("RACK"));
        ovens.load("09:30", "T1", "RCV r2");
        ovens.cure("10:00", "10:30", "C-2", List.of(), List.of("RACK"));
        ovens.unload("09:00", "RACK");
        truthOfRun("C-1", "r1");
        truthOfRun("C-2");
    }

    /** Lost: that r2, with B, went into w1 between the first shipment and the second. */
    @Test
    void aReceiverThatWasPutInBetweenTwoShipmentsUnseenIsInTheSecond() {
        places();
        plant.bondWithLot("07:00", "r1", "A");
        plant.bondWithLot("07:00", "r2", "B");
        install("08:00", "r1", "w1");
        install("08:10", "w1", "m1");
        install("08:20", "m1", "p1");
        plant.ship("09:00", "S-1", "Sunny Site", "PANEL p1");
        plant.takeBack("10:00", "Sunny Site", "PANEL p1");
        remove("11:00", "r1", "w1");
        plant.ship("13:00", "S-2", "Other Site", "PANEL p1");
        truth("A", "r1", "w1", "m1", "p1");
        truth("B", "r2", "w1", "m1", "p1");
        assertThat(asked.lot("A").atShipment()).containsKeys("r1", "w1", "m1", "p1");
        assertThat(asked.lot("B").atShipment()).containsKeys("r2", "w1", "m1", "p1");
    }

    /** Lost: that r1 was in C-2 when it was bonded again in its place, between two shipments of its panel. */
    @Test
    void aReceiverThatWasBondedAgainInPlaceNeedsAnotherCureBeforeItsPanelIsShippedAgain() {
        cured();
        plant.bondWithLot("06:00", "r1", "A");
        cure("06:30", "07:00", "C-1", "r1");
        install("08:00", "r1", "w1");
        install("08:10", "w1", "p1");
        plant.ship("09:00", "S-1", "Sunny Site", "PANEL p1");
        plant.takeBack("10:00", "Sunny Site", "PANEL p1");
        plant.bondWithLot("11:00", "r1", "B");
        cure("11:30", "12:00", "C-2", "r2");
        plant.ship("13:00", "S-2", "Other Site", "PANEL p1");
        truthOfRun("C-2", "r2", "r1", "w1", "p1");
    }

    /** Lost: the removal of m1 from p1, before it was put back. */
    @Test
    void aModuleThatWasOutOfThePanelIsNotCertainlyReachedMeanwhile() {
        places();
        install("08:00", "m1", "p1");
        install("12:00", "m1", "p1");
        glue("11:00", "p1", "A");
        glue("13:00", "p1", "B");
        truth("A", "p1");
        truth("B", "p1", "m1");
        assertThat(asked.lot("A").ever()).containsEntry("m1", POSSIBLE);
        assertThat(asked.lot("B").ever()).containsEntry("m1", CERTAIN);
    }
}
