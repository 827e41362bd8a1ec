package dev.sunthread.genealogy;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static dev.sunthread.genealogy.Certainty.POSSIBLE;
import static dev.sunthread.genealogy.Certainty.UNPROVEN;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Ovens;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * The hard cases of runs and carriers, and of what reaches inside, each as the smallest plant that shows it, on a real
 * database. A query that follows parents to children would have given the answer that the comment names.
 */
@SunthreadTest
class HardCasesOfRunsTests {

    @Autowired
    Door door;

    @Autowired
    Traces traces;

    @Autowired
    WindowProposals windows;

    Plant plant;
    Ovens ovens;
    Asked asked;

    @BeforeEach
    void released() {
        plant = Plant.released(door);
        ovens = Ovens.released(plant);
        asked = new Asked(traces);
        plant.receipt("1 06:00", "COAT", "ADH");
        plant.birth("2 06:00", "RCV", "r1", "r2", "r3", "r4");
        plant.birth("2 06:00", "WALL", "w1", "w2");
        plant.birth("2 06:00", "MOD", "m1");
    }

    /** Units that the run names: those on the tray would be missed. */
    @Test
    void case6SharedOvenLoadReachesAllThatLayInIt() {
        ovens.load("08:00", "T1", "RCV r1", "RCV r2");
        ovens.load("08:05", "RACK", "T1");
        ovens.cure("08:10", "09:10", "C-1", List.of("RCV r3"), List.of("RACK"));
        ovens.unload("09:20", "RACK", "T1");
        ovens.unload("09:30", "T1");
        plant.install("10:00", "RCV r1", "WALL w1", "1");
        assertThat(asked.scope(new Scope.CureRun("C-1")).ever())
                .isEqualTo(Map.of("r1", CERTAIN, "r2", CERTAIN, "r3", CERTAIN, "w1", CERTAIN));
        assertThat(asked.unit("WALL", "w1").ever()).containsEntry("C-1", CERTAIN);
    }

    /** Everything that was ever on the tray: r3 would be in C-1; or only what is on it now: r2 would be clean of C-2. */
    @Test
    void case14CarrierSharedAtDifferentTimesGivesOnlyWhatWasOnItThen() {
        ovens.load("08:00", "T1", "RCV r1", "RCV r2");
        ovens.cure("08:10", "09:10", "C-1", List.of(), List.of("T1"));
        ovens.unload("09:20", "T1", "RCV r1");
        ovens.load("10:00", "T1", "RCV r3");
        ovens.cure("10:10", "11:10", "C-2", List.of(), List.of("T1"));
        ovens.unload("11:20", "T1", "RCV r3");
        assertThat(asked.scope(new Scope.CureRun("C-1")).ever()).isEqualTo(Map.of("r1", CERTAIN, "r2", POSSIBLE));
        assertThat(asked.scope(new Scope.CureRun("C-2")).ever()).isEqualTo(Map.of("r2", POSSIBLE, "r3", CERTAIN));
    }

    /** The wall alone: r1 would not carry the coat into w2, and r4, put in afterwards, would. */
    @Test
    void case33CoatAndBakeOfAWallReachWhatIsInsideAtThatTimeAndStayWithIt() {
        plant.install("08:00", "RCV r1", "WALL w1", "1");
        plant.install("08:05", "RCV r2", "WALL w1", "2");
        plant.step("09:00", "coat", "WALL", "w1", List.of(Map.of("item", "ADH", "lot", "COAT")));
        ovens.cure("09:10", "09:40", "C-1", List.of("WALL w1"), List.of());
        plant.remove("10:00", "RCV r1", "WALL w1");
        plant.install("11:00", "RCV r1", "WALL w2", "1");
        plant.install("11:10", "RCV r4", "WALL w1", "1");
        Map<String, Certainty> reached = Map.of("w1", CERTAIN, "r1", CERTAIN, "r2", CERTAIN, "w2", CERTAIN);
        assertThat(asked.lot("COAT").ever()).isEqualTo(reached);
        assertThat(asked.scope(new Scope.CureRun("C-1")).ever()).isEqualTo(reached);
        assertThat(asked.unit("RCV", "r4").ever()).isEmpty();
    }

    /** The named unit alone: the wall around it, and its neighbour r2, would be clean of the coat. */
    @Test
    void case33StepOnAnInstalledUnitActsOnItsOutermostParentUnlessTheRouteSaysAlone() {
        plant.install("08:00", "RCV r1", "WALL w1", "1");
        plant.install("08:05", "RCV r2", "WALL w1", "2");
        plant.install("08:10", "WALL w1", "MOD m1", "1");
        plant.step("09:00", "coat", "RCV", "r1", List.of(Map.of("item", "ADH", "lot", "COAT")));
        assertThat(asked.lot("COAT").ever().keySet()).containsExactly("m1", "r1", "r2", "w1");
        aloneFromNowOn("coat");
        assertThat(asked.lot("COAT").ever().keySet()).containsExactly("m1", "r1", "w1");
        assertThat(asked.lot("COAT").ever()).doesNotContainKey("r2");
        assertThat(asked.wider().lot("COAT").ever()).containsEntry("r2", CERTAIN);
    }

    /** Sealed walls look complete by count: w1 would be clean of r3 and r4, though one of them may be in it. */
    @Test
    void case35WallSealedWithAReceiverUnscannedIsUnprovenForEveryReceiverWithoutAPlace() {
        new dev.sunthread.testing.Supply(plant).structure("WALL", "1 RCV", "2 RCV");
        plant.say(
                "route",
                "1 01:00",
                Map.of(
                        "item",
                        "WALL",
                        "revision",
                        "A",
                        "operations",
                        List.of(
                                Map.of("operation", "fit", "name", "Fit", "consumes", List.of("RCV")),
                                Map.of("operation", "seal", "name", "Seal", "consumes", List.of()))));
        plant.install("08:00", "RCV r1", "WALL w1", "1");
        plant.install("08:00", "RCV r2", "WALL w2", "1");
        plant.bondWithLot("07:00", "r3", "COAT");
        plant.step("09:00", "seal", "WALL", "w1", List.of());
        plant.install("10:00", "WALL w1", "MOD m1", "1");
        assertThat(asked.unit("WALL", "w1").ever())
                .isEqualTo(Map.of("r1", CERTAIN, "r3", UNPROVEN, "r4", UNPROVEN, "COAT", UNPROVEN));
        // r3 may have been in w1 when it was bonded, but r1 and the module were not around it yet, and r4 not beside it
        assertThat(asked.lot("COAT").ever()).isEqualTo(Map.of("r3", CERTAIN, "w1", UNPROVEN, "m1", UNPROVEN));
        plant.bondWithLot("10:30", "r3", "COAT");
        assertThat(asked.lot("COAT").ever())
                .isEqualTo(Map.of("r3", CERTAIN, "w1", UNPROVEN, "m1", UNPROVEN, "r1", UNPROVEN));
        plant.step("11:00", "coat", "MOD", "m1", List.of(Map.of("item", "ADH", "lot", "COAT")));
        assertThat(asked.unit("RCV", "r4").ever()).isEqualTo(Map.of("COAT", UNPROVEN));
    }

    /** The last pass: everything tested since would count, and the rig that passed it blindly would hide the rest. */
    @Test
    void case8WindowOpensAtTheLastGoodEventAbleToSeeTheFault() {
        plant.say("specification", "1 00:00", Map.of("specification", "LOOK", "revision", "A", "name", "Look"));
        plant.say(
                "fault",
                "1 00:00",
                Map.of("fault", "void", "revision", "A", "name", "A void in the bond", "tests", List.of("IV")));
        ovens.verify("06:00", "RIG", "good");
        plant.step("07:00", "bond", "RCV", "r1", List.of());
        ovens.test("07:30", "T-1", "RCV r1", "pass");
        ovens.verify("08:00", "RIG", "good");
        plant.step("08:10", "bond", "RCV", "r2", List.of());
        ovens.test("08:30", "T-2", "RCV r2", "pass");
        ovens.verify("09:00", "RIG", "bad");
        plant.cleanPoint("10:00", "V1");
        ProposedWindow rig = windows.ofEquipment("RIG", "void", Plant.at("09:30"));
        assertThat(rig.window().from()).isEqualTo(Plant.at("08:00").minusSeconds(10));
        ProposedWindow valve = windows.ofPosition("BOND", "V1", "void", Plant.at("09:30"));
        assertThat(valve.window().from()).isEqualTo(Plant.at("07:00").minusSeconds(10));
        assertThat(valve.window().to()).isEqualTo(Plant.at("10:00").plusSeconds(10));
        assertThat(valve.opened()).contains("T-1").contains("IV");
        assertThat(asked.scope(new Scope.Rig("RIG", "void", new Scope.Window(null, Plant.at("09:30"))))
                        .ever())
                .isEqualTo(Map.of("r2", CERTAIN));
    }

    private void aloneFromNowOn(String operation) {
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
                                operation,
                                "name",
                                "Coat",
                                "consumes",
                                List.of(),
                                "reach",
                                "unit-alone"))));
    }
}
