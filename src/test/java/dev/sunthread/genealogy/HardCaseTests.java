package dev.sunthread.genealogy;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static dev.sunthread.genealogy.Certainty.POSSIBLE;
import static dev.sunthread.genealogy.Certainty.UNPROVEN;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * The hard cases of a trace, each as the smallest plant that shows it, on a real database. A query that follows parents
 * to children would have given the answer that the comment names.
 */
@SunthreadTest
class HardCaseTests {

    @Autowired
    Door door;

    @Autowired
    Sealer sealer;

    @Autowired
    Traces traces;

    Plant plant;
    Asked asked;

    @BeforeEach
    void released() {
        plant = Plant.released(door);
        asked = new Asked(traces);
        plant.receipt("1 06:00", "A", "ADH", "SUP-1");
        plant.receipt("1 06:00", "B", "ADH", "SUP-2");
        plant.receipt("1 06:00", "C", "ADH", "SUP-2", "SUP-3");
        plant.birth("2 06:00", "RCV", "r1", "r2", "r3", "r4");
        plant.birth("2 06:00", "WALL", "w1", "w2");
        plant.birth("2 06:00", "MOD", "m1");
        plant.birth("2 06:00", "PANEL", "p1", "p2");
    }

    /** Current parents only: w1 would be clean though it was shipped with r1. */
    @Test
    void case1ComponentSwappedOutAffectsBothParentsEachForItsTime() {
        plant.bondWithLot("08:00", "r1", "A");
        plant.install("09:00", "RCV r1", "WALL w1", "1");
        plant.ship("10:00", "S-1", "Site North", "WALL w1");
        plant.takeBack("11:00", "Site North", "WALL w1");
        plant.remove("12:00", "RCV r1", "WALL w1");
        plant.install("13:00", "RCV r1", "WALL w2", "1");
        plant.ship("14:00", "S-2", "Site South", "WALL w2");
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r1", CERTAIN, "w1", CERTAIN, "w2", CERTAIN));
        assertThat(asked.lot("A").now()).isEqualTo(Map.of("r1", CERTAIN, "w2", CERTAIN));
        assertThat(asked.lot("A").atShipment()).isEqualTo(Map.of("r1", CERTAIN, "w1", CERTAIN, "w2", CERTAIN));
        assertThat(asked.lot("A").line("w1").shipments())
                .containsExactly("S-1 to Site North on 2026-03-10, certain then");
    }

    /** Last lot loaded only: r2 would be clean of A. */
    @Test
    void case2CartridgeChangedWithoutPurgeCarriesTheEarlierLotOver() {
        plant.charge("08:00", "A", "V1");
        plant.bondAt("08:30", "r1", "V1");
        plant.discharge("09:00", "V1");
        plant.charge("09:10", "B", "V1");
        plant.bondAt("09:30", "r2", "V1");
        plant.cleanPoint("10:00", "V1");
        plant.bondAt("10:30", "r3", "V1");
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r1", CERTAIN, "r2", POSSIBLE));
        assertThat(asked.lot("B").ever()).isEqualTo(Map.of("r2", CERTAIN, "r3", CERTAIN));
    }

    /** Join on the loaded interval: r2 would have no adhesive at all. */
    @Test
    void case3ScanGapBetweenDischargeAndChargeMakesBothNeighboursPossible() {
        plant.charge("08:00", "A", "V1");
        plant.bondAt("08:30", "r1", "V1");
        plant.discharge("09:00", "V1");
        plant.bondAt("09:30", "r2", "V1");
        plant.charge("10:00", "B", "V1");
        plant.bondAt("10:30", "r3", "V1");
        assertThat(asked.unit("RCV", "r2").ever()).isEqualTo(Map.of("A", POSSIBLE, "B", POSSIBLE, "C", UNPROVEN));
        assertThat(asked.lot("A").ever()).containsEntry("r1", CERTAIN).containsEntry("r2", POSSIBLE);
        assertThat(asked.lot("B").ever()).containsEntry("r2", POSSIBLE).containsEntry("r3", CERTAIN);
    }

    /** Oldest lot first: r1 would be of A alone. */
    @Test
    void case10LotsAreNotGuessedByFirstInFirstOut() {
        plant.charge("08:00", "A", "V1");
        plant.charge("08:00", "B", "V2");
        plant.step("09:00", "bond", "RCV", "r1", List.of(Map.of("item", "ADH")));
        assertThat(asked.unit("RCV", "r1").ever()).isEqualTo(Map.of("A", POSSIBLE, "B", POSSIBLE, "C", UNPROVEN));
    }

    /** One supplier lot per receipt: C would be missed behind SUP-2. */
    @Test
    void case12SupplierLotLeadsToEveryReceiptThatHoldsIt() {
        plant.bondWithLot("08:00", "r1", "A");
        plant.bondWithLot("08:10", "r2", "B");
        plant.bondWithLot("08:20", "r3", "C");
        assertThat(asked.supplierLot("SUP-2").ever()).isEqualTo(Map.of("r2", CERTAIN, "r3", CERTAIN));
        assertThat(asked.supplierLot("SUP-3").ever()).isEqualTo(Map.of("r3", CERTAIN));
        assertThat(asked.supplierLot("SUP-2").head().suspects()).containsExactly("lot B", "lot C");
    }

    /** A visited set: m1 and p1 would keep the late arrival through w2 and be clean by it. */
    @Test
    void case15ReworkLoopNeitherWalksForEverNorHidesAnEarlierWay() {
        plant.bondWithLot("08:00", "r1", "A");
        plant.install("09:00", "RCV r1", "WALL w1", "1");
        plant.install("09:30", "WALL w1", "MOD m1", "wall");
        plant.install("09:40", "MOD m1", "PANEL p1", "1");
        plant.remove("10:00", "RCV r1", "WALL w1");
        plant.remove("10:30", "MOD m1", "PANEL p1");
        plant.install("11:00", "RCV r1", "WALL w1", "1");
        plant.remove("12:00", "RCV r1", "WALL w1");
        plant.install("13:00", "MOD m1", "PANEL p2", "1");
        assertThat(asked.lot("A").ever())
                .isEqualTo(Map.of("r1", CERTAIN, "w1", CERTAIN, "m1", CERTAIN, "p1", CERTAIN, "p2", CERTAIN));
        assertThat(asked.lot("A").now()).isEqualTo(Map.of("r1", CERTAIN));
    }

    /** Rows changed in place: what was believed at shipment would be lost. */
    @Test
    void case17VoidedAndCorrectedScansAreBelievedAsKnownAtTheCutOff() {
        plant.bondWithLot("08:00", "r1", "A");
        String bond = plant.lastId();
        plant.ship("09:00", "S-1", "Site North", "RCV r1");
        long atShipment = sealer.seal();
        plant.correct(
                "10:00",
                bond,
                Map.of(
                        "operation",
                        "bond",
                        "station",
                        "BOND",
                        "units",
                        List.of(Map.of("item", "RCV", "serial", "r1")),
                        "uses",
                        List.of(Map.of("item", "ADH", "lot", "B"))));
        long corrected = sealer.seal();
        plant.undo("11:00", plant.lastId());
        assertThat(asked.lot("A").ever()).isEmpty();
        assertThat(asked.asKnownAt(atShipment).lot("A").ever()).isEqualTo(Map.of("r1", CERTAIN));
        assertThat(asked.asKnownAt(corrected).lot("A").ever()).isEmpty();
        assertThat(asked.asKnownAt(corrected).lot("B").ever()).isEqualTo(Map.of("r1", CERTAIN));
        assertThat(asked.lot("B").ever()).isEmpty();
    }

    /** Last shipment only: Site North would not be told. */
    @Test
    void case32ShippedReturnedAndShippedAgainTellsEveryConsignee() {
        plant.bondWithLot("08:00", "r1", "A");
        plant.install("09:00", "RCV r1", "PANEL p1", "1");
        plant.ship("10:00", "S-1", "Site North", "PANEL p1");
        plant.takeBack("11:00", "Site North", "PANEL p1");
        plant.ship("12:00", "S-2", "Site South", "PANEL p1");
        assertThat(asked.lot("A").line("p1").shipments())
                .containsExactly(
                        "S-1 to Site North on 2026-03-10, certain then",
                        "S-2 to Site South on 2026-03-10, certain then");
        assertThat(asked.lot("A").line("r1").shipments()).hasSize(2);
        assertThat(asked.lot("A").line("p1").place()).startsWith("shipped to Site South");
    }

    /** Refused lines: r2 would not be in w1 for the trace. */
    @Test
    void case36LateScanThatBreaksARuleIsAFactWithAFindingInsideTheTrace() {
        plant.bondWithLot("08:00", "r1", "A");
        plant.bondWithLot("08:00", "r2", "B");
        plant.holdUnit("08:30", "RCV r2", "suspect bond");
        plant.install("09:00", "RCV r1", "WALL w1", "1");
        var late = plant.install("09:05", "RCV r2", "WALL w1", "1");
        assertThat(late.findings())
                .extracting(finding -> finding.rule())
                .containsExactlyInAnyOrder("unit-is-not-on-hold", "position-holds-one-thing");
        assertThat(asked.lot("B").ever()).isEqualTo(Map.of("r2", CERTAIN, "w1", POSSIBLE));
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r1", CERTAIN, "w1", POSSIBLE));
        assertThat(asked.lot("B").line("w1").holds()).containsExactly("Unit RCV r2 was put into it while on hold");
        assertThat(asked.lot("B").head().openFindings()).isEqualTo(2);
    }
}
