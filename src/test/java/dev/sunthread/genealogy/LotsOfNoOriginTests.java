package dev.sunthread.genealogy;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static dev.sunthread.genealogy.Certainty.UNPROVEN;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Supply;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A lot that was used, and of which no record tells where it came from. */
@SunthreadTest
class LotsOfNoOriginTests {

    @Autowired
    Door door;

    @Autowired
    Traces traces;

    Plant plant;
    Asked asked;

    @BeforeEach
    void released() {
        plant = Plant.released(door);
        asked = new Asked(traces);
        plant.item("BASE", "lot", null, "g");
        new Supply(plant).structure("ADH", "base BASE");
        plant.birth("2 06:00", "RCV", "r1", "r2");
        plant.receipt("2 07:00", "A", "ADH");
        plant.receipt("2 07:00", "B", "BASE");
        plant.receipt("2 07:00", "C", "CELL");
    }

    @Test
    void mayBeOfEveryLotOfItsItemAndOfEachComponentOfItsFormula() {
        plant.bondWithLot("2 08:00", "r1", "X");
        Map<String, Certainty> through = Map.of("X", UNPROVEN, "r1", UNPROVEN);
        assertThat(asked.lot("A").ever()).isEqualTo(through);
        assertThat(asked.lot("B").ever()).isEqualTo(through);
        assertThat(asked.lot("C").ever()).isEmpty();
        assertThat(asked.unit("RCV", "r1").ever())
                .isEqualTo(Map.of("X", CERTAIN, "A", UNPROVEN, "B", UNPROVEN, "r2", UNPROVEN));
    }

    @Test
    void mayHaveBeenRecoveredOutOfAUnitThatWasThere() {
        plant.step("2 07:30", "place", "RCV", "r1", List.of(Map.of("item", "CELL", "lot", "C")));
        plant.bondWithLot("2 08:00", "r2", "X");
        assertThat(asked.lot("C").ever()).isEqualTo(Map.of("r1", CERTAIN, "X", UNPROVEN, "r2", UNPROVEN));
        assertThat(asked.unit("RCV", "r2").ever())
                .isEqualTo(Map.of("X", CERTAIN, "A", UNPROVEN, "B", UNPROVEN, "C", UNPROVEN, "r1", UNPROVEN));
    }

    /** What was taken out stayed where it went, whatever became of what it had come through. */
    @Test
    void staysWhereItWasRecoveredIntoWhenItsPartLeft() {
        plant.birth("2 06:00", "WALL", "w1");
        plant.step("2 07:10", "place", "RCV", "r1", List.of(Map.of("item", "CELL", "lot", "C")));
        plant.install("2 07:20", "RCV r1", "WALL w1", "R1");
        plant.remove("2 07:40", "RCV r1", "WALL w1");
        plant.bondWithLot("2 08:00", "r2", "X");
        assertThat(asked.lot("C").now()).containsEntry("r2", UNPROVEN);
    }

    @Test
    void isNotOfWhatAUnitTookInAfterItsFirstSignOrOfAUnitThatCameLater() {
        plant.bondWithLot("2 08:00", "r2", "X");
        plant.step("2 09:00", "place", "RCV", "r1", List.of(Map.of("item", "CELL", "lot", "C")));
        plant.birth("2 10:00", "RCV", "r3");
        assertThat(asked.lot("C").ever()).isEqualTo(Map.of("r1", CERTAIN));
        assertThat(asked.unit("RCV", "r2").ever()).doesNotContainKey("r3");
    }

    /** As a receipt without a supplier lot may be of any of its item. */
    @Test
    void mayBeOfASupplierLotThatCameAgainLater() {
        plant.bondWithLot("2 08:00", "r1", "X");
        plant.receipt("3 07:00", "LATE", "ADH", "SUP-1");
        plant.receipt("3 07:00", "OTHER", "CELL", "SUP-2");
        assertThat(asked.supplierLot("SUP-1").ever()).isEqualTo(Map.of("r1", UNPROVEN));
        assertThat(asked.supplierLot("SUP-1").head().suspects())
                .containsExactlyInAnyOrder("lot A", "lot LATE", "lot X");
        assertThat(asked.supplierLot("SUP-2").ever()).isEmpty();
    }

    @Test
    void mayBeOfWhatWasReceivedInAWindowThatItsFirstSignIsNotBefore() {
        plant.bondWithLot("2 08:00", "r1", "X");
        assertThat(received("2 00:00").head().suspects()).containsExactlyInAnyOrder("lot A", "lot X");
        plant.receipt("3 07:00", "LATE", "ADH");
        assertThat(received("2 09:00").head().suspects()).containsExactly("lot LATE");
    }

    private Asked.Seen received(String from) {
        return asked.scope(new Scope.Received("ADH", null, new Scope.Window(Plant.at(from), null)));
    }

    @Test
    void isNotOfALotThatCameAfterItsFirstSign() {
        plant.bondWithLot("2 08:00", "r1", "X");
        plant.receipt("3 07:00", "LATE", "ADH");
        assertThat(asked.lot("LATE").ever()).isEmpty();
    }

    @Test
    void lacksNothingOnceItsReceiptIsTold() {
        plant.bondWithLot("2 08:00", "r1", "X");
        plant.receipt("2 07:30", "X", "ADH");
        assertThat(asked.lot("A").ever()).isEmpty();
    }

    /** What went on top is recorded; the remainder that it went on top of was there before. */
    @Test
    void lacksItStillWhereOnlyWhatWentOnTopIsTold() {
        new Supply(plant).topUp("2 08:00", "X", "ADH", "A");
        plant.receipt("2 07:30", "A2", "ADH");
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("X", CERTAIN));
        assertThat(asked.lot("A2").ever()).isEqualTo(Map.of("X", UNPROVEN));
        assertThat(asked.lot("C").ever()).isEmpty();
    }

    @Test
    void isToldOfByItsEndAlone() {
        plant.say("lot-ending", "2 08:00", Map.of("lot", "X", "why", "used-up"));
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("X", UNPROVEN));
    }

    /** Nothing names the mix: its parts may have gone into it, though nothing was left of them when it was used. */
    @Test
    void mayStandBehindAUseThoughNoRecordNamesIt() {
        plant.say("lot-ending", "2 07:30", Map.of("lot", "B", "why", "used-up"));
        plant.step("2 08:00", "bond", "RCV", "r1", List.of(Map.of("item", "ADH")));
        assertThat(asked.lot("B").ever()).isEqualTo(Map.of("r1", UNPROVEN));
        assertThat(asked.unit("RCV", "r1").ever()).isEqualTo(Map.of("A", UNPROVEN, "B", UNPROVEN));
    }

    @Test
    void mayBeOfAnyLotIfNothingTellsItsItem() {
        plant.charge("2 08:00", "X", "V1");
        assertThat(asked.lot("C").ever()).isEqualTo(Map.of("X", UNPROVEN));
    }

    @Test
    void isOfTheItemsThatWereAtThePositionItWasLoadedAt() {
        plant.charge("2 07:10", "A", "V1");
        plant.discharge("2 07:20", "V1");
        plant.charge("2 08:00", "X", "V1");
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("X", UNPROVEN));
        assertThat(asked.lot("C").ever()).isEmpty();
    }

    @Test
    void isOfTheItemsThatGoIntoThePlaceItWasPutInto() {
        new Supply(plant).structure("RCV", "P CELL");
        plant.say(
                "installation",
                "2 08:00",
                Map.of("child", Map.of("lot", "X"), "parent", Plant.unit("RCV r1"), "position", "P"));
        assertThat(asked.lot("C").ever()).isEqualTo(Map.of("X", UNPROVEN, "r1", UNPROVEN));
        assertThat(asked.lot("A").ever()).isEmpty();
    }

    @Test
    void mayHaveBeenOfAnApprovedAlternateEitherWay() {
        plant.item("ADB", "lot", null, "g");
        plant.receipt("2 07:00", "D", "ADB");
        plant.say(
                "route",
                "1 00:10",
                Map.of(
                        "item",
                        "RCV",
                        "revision",
                        "A",
                        "operations",
                        List.of(Map.of(
                                "operation",
                                "bond",
                                "name",
                                "bond",
                                "consumes",
                                List.of("ADH"),
                                "alternates",
                                List.of(Map.of("item", "ADH", "alternate", "ADB"))))));
        plant.bondWithLot("2 08:00", "r1", "X");
        plant.step("2 08:00", "bond", "RCV", "r2", List.of(Map.of("item", "ADB", "lot", "Y")));
        assertThat(asked.lot("D").ever()).containsEntry("X", UNPROVEN).containsEntry("r1", UNPROVEN);
        assertThat(asked.lot("A").ever()).containsEntry("Y", UNPROVEN).containsEntry("r2", UNPROVEN);
    }

    /** Nothing tells how the item comes about: neither a receipt nor a formula, nor a record of one that was made. */
    @Test
    void mayBeMadeOfAnythingIfItsItemHasNoFormulaAndNeverCame() {
        plant.item("MIX", "lot", null, "g");
        plant.step("2 08:00", "bond", "RCV", "r1", List.of(Map.of("item", "MIX", "lot", "X")));
        assertThat(asked.lot("C").ever()).isEqualTo(Map.of("X", UNPROVEN, "r1", UNPROVEN));
    }

    @Test
    void mayBeMadeOfWhatOthersOfItsItemWereMadeOf() {
        plant.item("MIX", "lot", null, "g");
        new Supply(plant).blend("2 07:10", "M", "MIX", "B");
        plant.step("2 08:00", "bond", "RCV", "r1", List.of(Map.of("item", "MIX", "lot", "X")));
        assertThat(asked.lot("B").ever()).isEqualTo(Map.of("M", CERTAIN, "X", UNPROVEN, "r1", UNPROVEN));
        assertThat(asked.lot("C").ever()).isEmpty();
    }

    @Test
    void mayHaveComeOutOfATankWhateverItsItem() {
        plant.say(
                "station",
                "1 00:00",
                Map.of(
                        "station",
                        "COAT",
                        "revision",
                        "A",
                        "name",
                        "Coat",
                        "clockUncertainty",
                        "10",
                        "positions",
                        List.of("T"),
                        "mixingBack",
                        List.of("T")));
        plant.say("charge", "2 07:10", Map.of("lot", "C", "station", "COAT", "position", "T"));
        plant.bondWithLot("2 08:00", "r1", "X");
        assertThat(asked.lot("C").ever()).isEqualTo(Map.of("X", UNPROVEN, "r1", UNPROVEN));
    }
}
