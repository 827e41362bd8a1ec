package dev.sunthread.genealogy;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
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

/** A demand belongs to its own step: what was done before that began, or before it was done again, does not meet it. */
@SunthreadTest
class DemandsInTheirOrderTests {

    @Autowired
    Door door;

    @Autowired
    Traces traces;

    Plant plant;
    Ovens ovens;
    Asked asked;

    @BeforeEach
    void released() {
        plant = Plant.released(door);
        ovens = Ovens.released(plant);
        asked = new Asked(traces);
        plant.say(
                "route",
                "1 00:10",
                Map.of(
                        "item",
                        "RCV",
                        "revision",
                        "A",
                        "operations",
                        List.of(
                                Map.of("operation", "bond", "name", "bond", "cures", List.of("CURE")),
                                Map.of("operation", "sort", "name", "sort", "tests", List.of("IV")),
                                Map.of("operation", "mark", "name", "mark"))));
        plant.birth("06:00", "RCV", "r1", "r2");
    }

    @Test
    void aCureBeforeTheBondIsNoCureOfIt() {
        ovens.cure("07:00", "07:30", "C-1", List.of("RCV r1"), List.of());
        did("08:00", "bond");
        ovens.cure("09:00", "09:30", "C-2", List.of("RCV r2"), List.of());
        did("10:00", "sort");
        assertThat(run("C-2")).isEqualTo(Map.of("r1", UNPROVEN, "r2", CERTAIN));
        assertThat(asked.unit("RCV", "r1").ever()).containsEntry("C-2", UNPROVEN);
    }

    @Test
    void aCureBeforeTheSecondBondIsNoCureOfIt() {
        did("07:00", "bond");
        ovens.cure("07:30", "08:00", "C-1", List.of("RCV r1"), List.of());
        did("08:30", "bond");
        ovens.cure("09:00", "09:30", "C-2", List.of("RCV r2"), List.of());
        did("10:00", "sort");
        ovens.cure("10:30", "11:00", "C-3", List.of("RCV r2"), List.of());
        assertThat(run("C-2")).isEqualTo(Map.of("r1", UNPROVEN, "r2", CERTAIN));
        assertThat(run("C-3")).isEqualTo(Map.of("r2", CERTAIN));
    }

    /** The bond that was done again went on to be cured; the first one went on to the next operation without. */
    @Test
    void aCureAfterTheNextOperationIsNoCureOfTheFirstBond() {
        did("07:00", "bond");
        ovens.cure("07:30", "08:00", "C-1", List.of("RCV r2"), List.of());
        did("08:30", "sort");
        did("09:00", "bond");
        ovens.cure("09:30", "10:00", "C-2", List.of("RCV r1"), List.of());
        plant.ship("11:00", "S-1", "Far Field", "RCV r1");
        assertThat(run("C-1")).isEqualTo(Map.of("r1", UNPROVEN, "r2", CERTAIN));
    }

    @Test
    void oneCureAfterABondThatWasDoneAgainIsEnough() {
        did("07:00", "bond");
        did("07:30", "bond");
        ovens.cure("08:00", "08:30", "C-1", List.of("RCV r1"), List.of());
        did("09:00", "sort");
        ovens.cure("09:00", "09:30", "C-2", List.of("RCV r2"), List.of());
        assertThat(run("C-2")).isEqualTo(Map.of("r2", CERTAIN));
    }

    @Test
    void aTestBeforeTheOperationWasDoneAgainIsNoTestOfThat() {
        did("07:00", "sort");
        ovens.test("07:10", "T-1", "RCV r1", "pass");
        did("07:30", "sort");
        ovens.test("07:40", "T-2", "RCV r2", "pass");
        did("08:00", "mark");
        assertThat(asked.scope(new Scope.TestRun("T-2")).ever()).isEqualTo(Map.of("r1", UNPROVEN, "r2", CERTAIN));
    }

    /** Nothing tells that it was loaded, and nothing that it was taken off. */
    @Test
    void whatMayHaveLainOnATrayInACureMayHaveLainThereInTheNextUntilAllIsTakenOff() {
        did("07:00", "bond");
        ovens.load("07:10", "T", "RCV r2");
        ovens.cure("07:30", "08:00", "C-1", List.of(), List.of("T"));
        did("08:30", "sort");
        ovens.cure("09:00", "09:30", "C-2", List.of(), List.of("T"));
        ovens.unload("10:00", "T");
        ovens.cure("10:30", "11:00", "C-3", List.of(), List.of("T"));
        assertThat(run("C-1")).isEqualTo(Map.of("r1", UNPROVEN, "r2", CERTAIN));
        assertThat(run("C-2")).isEqualTo(Map.of("r1", UNPROVEN, "r2", CERTAIN));
        assertThat(run("C-3")).isEmpty();
        assertThat(asked.unit("RCV", "r1").ever()).isEqualTo(Map.of("C-1", UNPROVEN, "C-2", UNPROVEN));
    }

    private Map<String, Certainty> run(String run) {
        return asked.scope(new Scope.CureRun(run)).ever();
    }

    private void did(String time, String operation) {
        plant.step(time, operation, "RCV", "r1", List.of());
    }
}
