package dev.sunthread.production;

import static dev.sunthread.testing.Workshop.rules;
import static dev.sunthread.testing.Workshop.sentences;
import static dev.sunthread.testing.Workshop.stepped;
import static dev.sunthread.testing.Workshop.unit;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.catalog.Demands;
import dev.sunthread.catalog.Items;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Workshop;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** What a route demands of an operation is there before a later one. */
@SunthreadTest
class PrerequisiteTests {

    private static final String NO_CURE = "demanded-cure-is-done-before-the-next-operation";
    private static final String NO_TEST = "demanded-test-is-passed-before-the-next-operation";

    @Autowired
    Door door;

    @Autowired
    Demands demands;

    @Autowired
    Items items;

    @Autowired
    OperationEnds ends;

    private Workshop workshop;

    @BeforeEach
    void released() {
        workshop = Workshop.released(door);
        workshop.demandingRoute();
    }

    @Test
    void findsALaterOperationWithoutWhatTheEarlierOneDemands() {
        assertThat(workshop.step("09:00", "bond", "RCV R1").findings()).isEmpty();
        assertThat(sentences(workshop.step("11:00", "coat", "RCV R1")))
                .containsExactly(
                        "Unit RCV R1 has no cure by recipe BAKE, which operation bond demands",
                        "Unit RCV R1 has no last result that passed of test PULL, which operation bond demands");
    }

    @Test
    void refusesALaterOperationWithoutItWhenAsked() {
        assertThatThrownBy(() -> workshop.ask("step", "11:00", stepped("coat", "RCV R1")))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("has no cure by recipe BAKE");
    }

    @Test
    void takesALaterOperationOnceCuredAndPassed() {
        workshop.bake("10", "C1", "RCV R1", "RCV R2");
        workshop.pull("10:10", "T1", "RCV R1", "pass");
        assertThat(workshop.ask("step", "11:00", stepped("coat", "RCV R1")).isNew())
                .isTrue();
        assertThat(rules(workshop.step("11:00", "coat", "RCV R1", "RCV R2"))).containsExactly(NO_TEST);
        assertThat(rules(workshop.step("09:45", "coat", "RCV R1"))).containsExactly(NO_CURE, NO_TEST);
    }

    @Test
    void cureAndTestBeforeTheBondAreNone() {
        workshop.bake("08", "C1", "RCV R1");
        workshop.pull("08:10", "T1", "RCV R1", "pass");
        assertThat(rules(workshop.step("11:00", "coat", "RCV R1"))).containsExactly(NO_CURE, NO_TEST);
        assertThatThrownBy(() -> workshop.ask("step", "11:00", stepped("coat", "RCV R1")))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("has no cure by recipe BAKE");
    }

    @Test
    void cureAndTestBeforeTheSecondBondAreNone() {
        workshop.bake("10", "C1", "RCV R1");
        workshop.pull("10:10", "T1", "RCV R1", "pass");
        workshop.bake("10", "C0", "RCV R2");
        workshop.pull("10:10", "T0", "RCV R2", "pass");
        workshop.step("10:30", "bond", "RCV R1", "RCV R2");
        assertThat(rules(workshop.step("11:00", "coat", "RCV R2"))).containsExactly(NO_CURE, NO_TEST);
        assertThatThrownBy(() -> workshop.ask("step", "11:00", stepped("coat", "RCV R1")))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("has no cure by recipe BAKE");
        workshop.bake("12", "C2", "RCV R1");
        workshop.pull("12:10", "T2", "RCV R1", "pass");
        assertThat(workshop.ask("step", "12:15", stepped("coat", "RCV R1")).isNew())
                .isTrue();
    }

    @Test
    void aVoidedRunIsNone() {
        workshop.bake("10", "C1", "RCV R1");
        workshop.plant().undo("10:01", workshop.plant().lastId());
        assertThat(rules(workshop.step("11:00", "coat", "RCV R1"))).contains(NO_CURE);
    }

    @Test
    void aRunReachesWhatWasOnItsCarriersAtAnyDepthThen() {
        workshop.load("09:00", "TRAY", "RCV R1", "RCV R2");
        workshop.stack("09:01", "RACK", "TRAY");
        workshop.unload("09:10", "TRAY", "RCV R2");
        workshop.bakeCarrier("10", "C1", "RACK");
        assertThat(rules(workshop.step("11:00", "coat", "RCV R1"))).containsExactly(NO_TEST);
        assertThat(rules(workshop.step("11:00", "coat", "RCV R2"))).containsExactly(NO_CURE, NO_TEST);
    }

    @Test
    void aRunReachesTheWholeAssemblyThatItsUnitWasInThen() {
        workshop.plant().install("09:00", "RCV R1", "WALL W1", "1");
        workshop.plant().install("09:00", "RCV R2", "WALL W1", "2");
        workshop.plant().remove("09:10", "RCV R2", "WALL W1");
        workshop.bake("10", "C1", "WALL W1");
        workshop.plant().install("10:30", "RCV R3", "WALL W1", "3");
        assertThat(rules(workshop.step("11:00", "coat", "RCV R1"))).containsExactly(NO_TEST);
        assertThat(rules(workshop.step("11:00", "coat", "RCV R2"))).containsExactly(NO_CURE, NO_TEST);
        assertThat(rules(workshop.step("11:00", "coat", "RCV R3"))).containsExactly(NO_CURE, NO_TEST);
    }

    @Test
    void aFailureThatIsToldAfterItsUnitWentOnIsFound() {
        workshop.bake("10", "C1", "RCV R1", "RCV R2");
        workshop.pull("10:10", "T1", "RCV R1", "pass");
        assertThat(workshop.step("11:00", "coat", "RCV R1").findings()).isEmpty();
        assertThat(workshop.pull("11:10", "T2", "RCV R1", "invalid").findings()).isEmpty();
        assertThat(workshop.pull("11:20", "T3", "RCV R1", "fail").findings()).isEmpty();
        assertThat(sentences(workshop.pull("10:30", "T4", "RCV R1", "fail")))
                .contains("Unit RCV R1 has no last result that passed of test PULL, which operation bond demands: test"
                        + " run T4 failed");
    }

    @Test
    void aFailureThatIsToldAfterItsUnitWentIntoAnotherIsFound() {
        workshop.bake("10", "C1", "RCV R1");
        workshop.pull("10:10", "T1", "RCV R1", "pass");
        workshop.plant().install("11:00", "RCV R1", "WALL W1", "1");
        assertThat(rules(workshop.pull("10:30", "T2", "RCV R1", "fail"))).contains(NO_TEST);
    }

    @Test
    void aFailureThatWasMadeGoodBeforeItsUnitWentOnIsNone() {
        workshop.bake("10", "C1", "RCV R1");
        workshop.pull("10:40", "T2", "RCV R1", "pass");
        assertThat(workshop.step("11:00", "coat", "RCV R1").findings()).isEmpty();
        assertThat(rules(workshop.pull("10:30", "T1", "RCV R1", "fail"))).doesNotContain(NO_TEST);
    }

    @Test
    void theLastValidTestCounts() {
        workshop.bake("10", "C1", "RCV R1", "RCV R2");
        workshop.pull("10:10", "T1", "RCV R1", "pass");
        workshop.pull("10:20", "T2", "RCV R1", "invalid");
        assertThat(workshop.step("11:00", "coat", "RCV R1").findings()).isEmpty();
        workshop.pull("10:30", "T3", "RCV R1", "fail");
        assertThat(rules(workshop.step("11:00", "coat", "RCV R1"))).containsExactly(NO_TEST);
    }

    @Test
    void aSignedDeviationLetsTheUnitGoOn() {
        workshop.bake("10", "C1", "RCV R1");
        workshop.plant()
                .say(
                        "deviation",
                        "10:30",
                        Map.of("unit", unit("RCV R1"), "specification", "PULL", "why", "too small to pull"));
        assertThat(workshop.step("11:00", "coat", "RCV R1").findings()).isEmpty();
    }

    @Test
    void nothingIsShippedWithoutWhatItsRouteDemands() {
        assertThat(rules(workshop.plant().ship("12:00", "S-1", "Sunny Field", "RCV R1")))
                .containsExactly(NO_CURE, NO_TEST, "earlier-operations-are-done-before-the-next");
    }

    @Test
    void nothingStartsUnlessEveryWayOfDemandCanBeLookedUp() {
        assertThatThrownBy(() -> new Prerequisites(List.of(), List.of(), ends, demands, items))
                .isInstanceOf(IllegalStateException.class);
    }
}
