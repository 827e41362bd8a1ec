package dev.sunthread.genealogy;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Small histories of uses, of where lots came from, and of what a step demands. */
class SmallHistoriesOfMaterialTests extends SmallHistories {

    @Test
    void aUseWithNeitherLabelNorPositionMayHaveBeenOfALotThatWasNotLoaded() {
        plant.charge("07:00", "A", "V1");
        use("08:00", Map.of("item", "ADH"), "r1");
        truth("B", "r1");
    }

    /** Truly r1 had A, r2 had B. */
    @Test
    void aRowThatSpansAChangeMayHaveHadEitherLot() {
        plant.charge("07:00", "A", "V1");
        plant.charge("10:10", "B", "V1");
        row("A", null);
        truth("A", "r1", "r2");
        truth("B", "r2");
    }

    /** Truly r2 had B, which was there from 10:08 to 10:12; the label scanned was that of A. */
    @Test
    void aRowMayHaveHadWhatWasLoadedInBetweenThoughTheFirstLotCameBack() {
        plant.charge("07:00", "A", "V1");
        plant.charge("10:08", "B", "V1");
        plant.charge("10:12", "A", "V1");
        row("A", null);
        truth("A", "r1", "r2");
        truth("B", "r2");
    }

    @Test
    void aRowThatSpansTwoChangesMayHaveHadEachLot() {
        receive("D");
        plant.charge("07:00", "A", "V1");
        plant.charge("10:08", "B", "V1");
        plant.charge("10:12", "D", "V1");
        row("A", null);
        truth("A", "r1", "r2");
        truth("B", "r2");
        truth("D", "r2");
    }

    /** Truly r2 was made from C2, which was put on at 10:10. */
    @Test
    void aRowThatSpansAChangeOfContainersMayHaveHadEither() {
        supply.containers("06:30", "A", "C1", "C2");
        chargeFrom("07:00", "A", "C1");
        chargeFrom("10:10", "A", "C2");
        row("A", "C1");
        assertThat(asked.scope(new Scope.Container("C1")).ever()).containsKeys("r1");
        assertThat(asked.scope(new Scope.Container("C2")).ever()).containsKeys("r2");
        assertThat(asked.scope(new Scope.Container("C1")).ever()).doesNotContainEntry("r2", CERTAIN);
        assertThat(asked.lot("A").ever()).containsEntry("r1", CERTAIN).containsEntry("r2", CERTAIN);
    }

    /** The same without a label: lot and container are inferred from the charge. */
    @Test
    void aRowWithoutALabelThatSpansAChangeOfContainersMayHaveHadEither() {
        supply.containers("06:30", "A", "C1", "C2");
        chargeFrom("07:00", "A", "C1");
        chargeFrom("10:10", "A", "C2");
        row(null, null);
        assertThat(asked.scope(new Scope.Container("C1")).ever()).containsKeys("r1");
        assertThat(asked.scope(new Scope.Container("C2")).ever()).containsKeys("r2");
        assertThat(asked.scope(new Scope.Container("C1")).ever()).doesNotContainEntry("r2", CERTAIN);
    }

    /** Lost: the charge of B at 10:11. */
    @Test
    void aRowWhoseLotCameOffMayHaveGoneOnWithAnyOther() {
        plant.charge("07:00", "A", "V1");
        plant.discharge("10:10", "V1");
        row("A", null);
        truth("A", "r1", "r2");
        truth("B", "r2");
    }

    /** The same, the row's lot not scanned. */
    @Test
    void aRowWithoutALabelWhoseLotCameOffMayHaveGoneOnWithAnyOther() {
        plant.charge("07:00", "A", "V1");
        plant.discharge("10:10", "V1");
        row(null, null);
        truth("A", "r1", "r2");
        truth("B", "r2");
    }

    /** Lost: the receipt of D, which went into r1 by hand; D is first named at 12:00. */
    @Test
    void aLotWithoutAReceiptMayHaveBeenUsedBeforeItsFirstSign() {
        lots.add("D");
        use("10:00", Map.of("item", "ADH"), "r1");
        plant.bondWithLot("12:00", "r2", "D");
        truth("D", "r1", "r2");
    }

    /** By a station whose clock is right within ten seconds, D was used two seconds before it came. */
    @Test
    void aLotThatCameWithinTheUncertaintyOfTheClockMayHaveBeenUsed() {
        lots.add("D");
        door(
                "receipt",
                "2026-03-10T10:00:02+01:00",
                Map.of("lot", "D", "item", "ADH", "quantity", "5", "unitOfMeasure", "g", "supplier", "Far Supplier"));
        use("10:00", Map.of("item", "ADH"), "r1");
        plant.charge("10:00", "D", "V1");
        plant.bondAt("10:00", "r2", "V1");
        truth("D", "r1", "r2");
    }

    /** What was taken out of r1 went into r2 by hand; no record tells its item. */
    @Test
    void aRecoveredLotOfUnknownItemMayHaveBeenUsed() {
        lots.add("R");
        plant.bondWithLot("07:00", "r1", "A");
        plant.say("recovery", "09:00", Map.of("unit", unit("r1"), "lot", "R"));
        use("10:00", Map.of("item", "ADH"), "r2");
        truth("A", "r1", "R", "r2");
    }

    /** M was mixed of A just before it was used, by another clock just after. */
    @Test
    void aBlendThatIsToldWithinTheUncertaintyOfTheClockLeadsToWhatWasMadeWithIt() {
        lots.add("M");
        plant.station("MIX", "10");
        door(
                "blend",
                "2026-03-10T10:00:05+01:00",
                Map.of(
                        "lot",
                        "M",
                        "item",
                        "ADH",
                        "way",
                        "blend",
                        "station",
                        "MIX",
                        "components",
                        List.of(Map.of("lot", "A"))));
        plant.bondWithLot("10:00", "r1", "M");
        truth("A", "M", "r1");
    }

    /** Lost: that R was taken out of r1. */
    @Test
    void whatWasRecoveredUnseenLeadsBackToTheUnit() {
        lots.add("R");
        plant.bondWithLot("07:00", "r1", "A");
        plant.bondWithLot("10:00", "r2", "R");
        truth("A", "r1", "R", "r2");
    }

    /** Lost: that M was mixed of A and of H, which is of another item; another mix of the same item is told. */
    @Test
    void aMixWithoutAFormulaThatIsLostLeadsBackToWhatOthersWereMixedOf() {
        lots.addAll(List.of("H", "M", "N"));
        plant.item("HARD", "lot", null, "g");
        plant.item("MIX", "lot", null, "g");
        plant.receipt("1 06:00", "H", "HARD");
        supply.blend("09:00", "N", "MIX", "B", "H");
        use("10:00", Map.of("item", "MIX", "lot", "M"), "r1");
        truth("A", "M", "r1");
        truth("H", "N", "M", "r1");
    }

    /** Lost: that A, of another item, was regraded as G; H is of the item from the start. */
    @Test
    void aLotThatWasRegradedUnseenLeadsBackThoughAnotherOfItsItemWasReceived() {
        lots.addAll(List.of("G", "H"));
        plant.item("LOW", "lot", null, "g");
        plant.receipt("1 06:00", "H", "LOW");
        use("10:00", Map.of("item", "LOW", "lot", "G"), "r1");
        truth("A", "G", "r1");
    }

    /** Lost: that A was regraded as G, of an item that is mixed of others. */
    @Test
    void aLotThatWasRegradedUnseenLeadsBackThoughItsItemHasAFormula() {
        lots.addAll(List.of("G", "H"));
        plant.item("LOW", "lot", null, "kg");
        plant.item("BASE", "lot", null, "g");
        supply.structure("LOW", "base BASE");
        plant.receipt("1 06:00", "H", "BASE");
        use("10:00", Map.of("item", "LOW", "lot", "G"), "r1");
        truth("A", "G", "r1");
    }

    /** Lost: that G was mixed of A and of E, which is measured by volume. */
    @Test
    void aLotThatWasMixedUnseenLeadsBackThoughAnotherOfItsItemWasReceived() {
        lots.addAll(List.of("E", "G", "H"));
        plant.item("LOW", "lot", null, "g");
        plant.item("THIN", "lot", null, "ml");
        plant.receipt("1 06:00", "H", "LOW");
        plant.say("receipt", "1 06:00", Map.of("lot", "E", "item", "THIN", "quantity", "5", "unitOfMeasure", "ml"));
        use("10:00", Map.of("item", "LOW", "lot", "G"), "r1");
        truth("A", "G", "r1");
        truth("E", "G", "r1");
    }

    /** A regrade leaves the measure as it is: what is counted is nothing that is weighed. */
    @Test
    void aLotIsNotRegradedFromWhatIsMeasuredOtherwise() {
        lots.addAll(List.of("C", "G", "H"));
        plant.item("LOW", "lot", null, "g");
        plant.receipt("1 06:00", "H", "LOW");
        plant.receipt("1 06:00", "C", "CELL");
        use("10:00", Map.of("item", "LOW", "lot", "G"), "r1");
        truth("C");
        assertThat(asked.lot("C").ever()).isEmpty();
    }

    /** Lost: that D came in, of the same supplier's lot as A. */
    @Test
    void aLotWhoseReceiptIsLostMayBeOfASuppliersLotThatCameBefore() {
        lots.add("D");
        plant.bondWithLot("10:00", "r1", "D");
        assertThat(asked.supplierLot("SUP-A").ever()).containsKeys("r1");
    }

    /** Lost: that V1, which mixes, was unloaded as U. */
    @Test
    void whatWasUnloadedUnseenAsAnotherItemLeadsBackToWhatWasLoaded() {
        lots.addAll(List.of("U", "K"));
        plant.item("LEFT", "lot", null, "g");
        plant.receipt("1 06:00", "K", "LEFT");
        plant.say(
                "station",
                "1 00:30",
                Map.of(
                        "station",
                        "TANK",
                        "revision",
                        "A",
                        "name",
                        "Tank",
                        "clockUncertainty",
                        "10",
                        "positions",
                        List.of("T"),
                        "mixingBack",
                        List.of("T")));
        plant.say("charge", "08:00", Map.of("lot", "A", "station", "TANK", "position", "T"));
        use("10:00", Map.of("item", "LEFT", "lot", "U"), "r1");
        truth("A", "U", "r1");
    }

    /** Lost: that r1 was in C-2; C-1, before the bond, names it. */
    @Test
    void aCureBeforeTheBondIsNotTheOneThatIsDemanded() {
        cured();
        cure("08:00", "08:30", "C-1", "r1");
        plant.bondWithLot("10:00", "r1", "A");
        cure("11:00", "11:30", "C-2", "r2");
        step("12:00", "coat", "r1");
        truthOfRun("C-1", "r1");
        truthOfRun("C-2", "r2", "r1");
    }

    /** Lost: that r1 was in C-2, after it was bonded again. */
    @Test
    void aCureBetweenTwoBondsDoesNotServeTheSecond() {
        cured();
        plant.bondWithLot("10:00", "r1", "A");
        cure("10:30", "11:00", "C-1", "r1");
        plant.bondWithLot("11:30", "r1", "B");
        cure("12:00", "12:30", "C-2", "r2");
        step("13:00", "coat", "r1");
        truthOfRun("C-2", "r2", "r1");
    }

    /** Lost: that r1 was in C-2; by another clock C-1 began before the bond and ended behind it. */
    @Test
    void aCureThatSpansTheBondDoesNotServeIt() {
        cured();
        cure("09:30", "10:30", "C-1", "r1");
        plant.bondWithLot("10:00", "r1", "A");
        cure("11:00", "11:30", "C-2", "r2");
        step("12:00", "coat", "r1");
        truthOfRun("C-2", "r2", "r1");
    }

    @Test
    void aCureThatBeginsWithTheBondIsCertain() {
        cured();
        plant.bondWithLot("10:00", "r1", "A");
        cure("10:00", "10:30", "C-1", "r1");
        step("12:00", "coat", "r1");
        truthOfRun("C-1", "r1");
        assertThat(asked.scope(new Scope.CureRun("C-1")).ever()).containsEntry("r1", CERTAIN);
    }
}
