package dev.sunthread.genealogy;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static dev.sunthread.genealogy.Certainty.POSSIBLE;
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

/**
 * The hard cases of lots and containers, each as the smallest plant that shows it, on a real database. A query that
 * follows parents to children would have given the answer that the comment names.
 */
@SunthreadTest
class HardCasesOfMaterialTests {

    @Autowired
    Door door;

    @Autowired
    Traces traces;

    Plant plant;
    Supply supply;
    Asked asked;

    @BeforeEach
    void released() {
        plant = Plant.released(door);
        supply = new Supply(plant);
        asked = new Asked(traces);
        plant.item("BASE", "lot", null, "g");
        plant.item("HARD", "lot", null, "g");
        plant.birth("2 06:00", "RCV", "r1", "r2", "r3", "r4");
        plant.birth("2 06:00", "WALL", "w1", "w2");
    }

    /** Lots of the item itself only: neither component would be found behind r1. */
    @Test
    void case4TwoPartMixLeadsToBothPartsAndNamesThePartThatIsNotRecorded() {
        supply.structure("ADH", "base BASE", "hardener HARD");
        plant.receipt("1 06:00", "B1", "BASE");
        plant.receipt("1 06:00", "H1", "HARD");
        plant.receipt("1 06:00", "H2", "HARD");
        supply.blend("07:00", "M1", "ADH", "B1", "H1");
        supply.blend("07:10", "M2", "ADH", "B1");
        plant.bondWithLot("08:00", "r1", "M1");
        plant.bondWithLot("08:10", "r2", "M2");
        assertThat(asked.lot("H1").ever())
                .isEqualTo(Map.of("M1", CERTAIN, "r1", CERTAIN, "M2", UNPROVEN, "r2", UNPROVEN));
        assertThat(asked.lot("H2").ever()).isEqualTo(Map.of("M2", UNPROVEN, "r2", UNPROVEN));
        assertThat(asked.unit("RCV", "r2").ever())
                .containsEntry("B1", CERTAIN)
                .containsEntry("H1", UNPROVEN)
                .containsEntry("H2", UNPROVEN);
    }

    /** The label's last lot only: r1 would be clean of A. */
    @Test
    void case5TopUpOnARemainderKeepsBothLots() {
        plant.receipt("1 06:00", "A", "ADH");
        plant.receipt("1 06:00", "B", "ADH");
        plant.bondWithLot("07:30", "r3", "B");
        supply.topUp("08:00", "AB", "ADH", "A", "B");
        plant.bondWithLot("09:00", "r1", "AB");
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("AB", CERTAIN, "r1", CERTAIN));
        assertThat(asked.lot("B").ever()).isEqualTo(Map.of("AB", CERTAIN, "r1", CERTAIN, "r3", CERTAIN));
    }

    /** The same with one container filled twice: the second lot alone would be found. */
    @Test
    void case5ContainerFilledAgainGivesBothLotsFromThenOn() {
        plant.receipt("1 06:00", "A", "ADH");
        plant.receipt("1 06:00", "B", "ADH");
        supply.containers("07:00", "A", "C1");
        bondFrom("07:30", "r1", "A", "C1");
        supply.containers("08:00", "B", "C1");
        bondFrom("08:30", "r2", "B", "C1");
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("C1", CERTAIN, "r1", CERTAIN, "r2", CERTAIN));
        assertThat(asked.lot("B").ever()).isEqualTo(Map.of("C1", CERTAIN, "r2", CERTAIN));
    }

    /** Uses that name the container only: r2 would be clean, though nobody scanned its syringe. */
    @Test
    void case11BadContainerThatWasNotRecordedPerUnitKeepsTheWholeLotIn() {
        plant.receipt("1 06:00", "A", "ADH");
        supply.containers("07:00", "A", "C1", "C2");
        bondFrom("08:00", "r1", "A", "C1");
        plant.bondWithLot("08:10", "r2", "A");
        bondFrom("08:20", "r3", "A", "C2");
        assertThat(asked.scope(new Scope.Container("C1")).ever()).isEqualTo(Map.of("r1", CERTAIN, "r2", POSSIBLE));
    }

    /** The lot on the label only: everything made before the merge and after the split would be clean. */
    @Test
    void case13SplitAndMergeAreWalkedThroughAndAMergeTaintsTheWhole() {
        plant.receipt("1 06:00", "A", "ADH");
        plant.receipt("1 06:00", "B", "ADH");
        plant.bondWithLot("07:00", "r3", "B");
        supply.split("07:30", "A", "A-1", "A-2");
        supply.merge("08:00", "AB", "A-1", "B");
        plant.bondWithLot("09:00", "r1", "AB");
        plant.bondWithLot("09:10", "r2", "A-2");
        plant.say("relabel", "09:20", Map.of("lot", "AB", "into", "AB-NEW"));
        plant.bondWithLot("09:30", "r4", "AB-NEW");
        assertThat(asked.lot("A").ever().keySet()).containsExactly("A-1", "A-2", "AB", "AB-NEW", "r1", "r2", "r4");
        assertThat(asked.lot("B").ever().keySet()).containsExactly("AB", "AB-NEW", "r1", "r3", "r4");
    }

    /** Children of the scrapped parent: w2 would be clean, and the cells recovered into stock too. */
    @Test
    void case16ScrappedParentLeavesItsSalvagedChildAndRecoveredMaterialSuspect() {
        plant.receipt("1 06:00", "A", "ADH");
        plant.bondWithLot("08:00", "r1", "A");
        plant.install("09:00", "RCV r1", "WALL w1", "1");
        plant.say("scrap", "10:00", Map.of("units", List.of(Plant.unit("WALL w1")), "why", "dropped"));
        plant.remove("11:00", "RCV r1", "WALL w1");
        plant.install("12:00", "RCV r1", "WALL w2", "1");
        supply.recover("12:30", "RCV r1", "OLD", "CELL");
        plant.step("13:00", "bond", "RCV", "r2", List.of(Map.of("item", "CELL", "lot", "OLD")));
        assertThat(asked.lot("A").ever())
                .isEqualTo(Map.of("r1", CERTAIN, "w1", CERTAIN, "w2", CERTAIN, "OLD", CERTAIN, "r2", CERTAIN));
        assertThat(asked.lot("A").now()).doesNotContainKey("w1").containsEntry("w2", CERTAIN);
    }

    /** Last glue only: the first lot would be lost by the rework. */
    @Test
    void case23GluedTwiceAddsTheSecondLotToTheFirst() {
        plant.receipt("1 06:00", "A", "ADH");
        plant.receipt("1 06:00", "B", "ADH");
        plant.bondWithLot("08:00", "r1", "A");
        plant.bondWithLot("09:00", "r1", "B");
        assertThat(asked.unit("RCV", "r1").ever()).isEqualTo(Map.of("A", CERTAIN, "B", CERTAIN));
    }

    /** The item of the route only: lots of the approved alternate would be missed behind r1. */
    @Test
    void case31ApprovedAlternateIsACandidateWhereTheLotIsNotRecorded() {
        plant.item("ALT", "lot", null, "g");
        plant.item("OTHER", "lot", null, "g");
        plant.receipt("1 06:00", "A", "ADH");
        plant.receipt("1 06:00", "T", "ALT");
        plant.receipt("1 06:00", "O", "OTHER");
        plant.say(
                "route",
                "1 01:00",
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
                                "Bond",
                                "consumes",
                                List.of("ADH"),
                                "alternates",
                                List.of(Map.of("item", "ADH", "alternate", "ALT"))))));
        plant.install("09:00", "RCV r1", "WALL w1", "1");
        assertThat(asked.unit("RCV", "r1").ever()).isEqualTo(Map.of("A", UNPROVEN, "T", UNPROVEN));
        assertThat(asked.lot("T").ever()).isEqualTo(Map.of("r1", UNPROVEN, "w1", UNPROVEN));
        assertThat(asked.lot("O").ever()).isEmpty();
    }

    private void bondFrom(String time, String serial, String lot, String container) {
        plant.step(time, "bond", "RCV", serial, List.of(Map.of("item", "ADH", "lot", lot, "container", container)));
    }
}
