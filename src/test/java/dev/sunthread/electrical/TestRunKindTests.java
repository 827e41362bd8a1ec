package dev.sunthread.electrical;

import static dev.sunthread.testing.Workshop.pulled;
import static dev.sunthread.testing.Workshop.rules;
import static dev.sunthread.testing.Workshop.sentences;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Workshop;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Tests of units; every result is kept. */
@SunthreadTest
class TestRunKindTests {

    private static final String UNTIL_IT_PASSED = "no-unit-is-tested-until-it-passes";

    @Autowired
    Door door;

    @Autowired
    JdbcClient jdbc;

    private Workshop workshop;

    @BeforeEach
    void released() {
        workshop = Workshop.released(door);
    }

    @Test
    void keepsEveryResult() {
        workshop.pull("10:00", "T1", "RCV R1", "fail");
        workshop.pull("10:05", "T2", "RCV R1", "invalid");
        workshop.pull("10:10", "T3", "RCV R1", "pass");
        assertThat(jdbc.sql("SELECT verdict FROM electrical.run_record ORDER BY ended_at")
                        .query(String.class)
                        .list())
                .containsExactly("FAIL", "INVALID", "PASS");
    }

    @Test
    void findsAPassAfterAFailureWithNothingDoneBetween() {
        assertThat(workshop.pull("10:00", "T1", "RCV R1", "fail").findings()).isEmpty();
        assertThat(workshop.pull("10:05", "T2", "RCV R1", "invalid").findings()).isEmpty();
        assertThat(sentences(workshop.pull("10:10", "T3", "RCV R1", "pass")))
                .containsExactly("Unit RCV R1 failed test PULL and passed it next with nothing recorded as done"
                        + " to it between");
        assertThat(workshop.pull("10:20", "T4", "RCV R1", "pass").findings()).isEmpty();
    }

    @Test
    void findsItAlsoWhenTheFailureIsToldAfterThePass() {
        workshop.pull("10:10", "T2", "RCV R1", "pass");
        assertThat(rules(workshop.pull("10:00", "T1", "RCV R1", "fail"))).containsExactly(UNTIL_IT_PASSED);
    }

    @Test
    void aStepOrASwapBetweenIsWork() {
        workshop.pull("10:00", "T1", "RCV R1", "fail");
        workshop.step("10:05", "rework", "RCV R1");
        assertThat(workshop.pull("10:10", "T2", "RCV R1", "pass").findings()).isEmpty();
        workshop.plant().install("09:00", "RCV R2", "WALL W1", "1");
        workshop.pull("10:00", "T3", "WALL W1", "fail");
        workshop.plant().remove("10:05", "RCV R2", "WALL W1");
        assertThat(workshop.pull("10:10", "T4", "WALL W1", "pass").findings()).isEmpty();
    }

    @Test
    void aVoidedStepIsNoWork() {
        workshop.pull("10:00", "T1", "RCV R1", "fail");
        workshop.step("10:05", "rework", "RCV R1");
        workshop.plant().undo("10:06", workshop.plant().lastId());
        assertThat(rules(workshop.pull("10:10", "T2", "RCV R1", "pass"))).containsExactly(UNTIL_IT_PASSED);
    }

    @Test
    void findsARunNumberUsedTwice() {
        workshop.pull("10:00", "T1", "RCV R1", "pass");
        assertThat(rules(workshop.pull("10:10", "T1", "RCV R2", "pass"))).containsExactly("test-run-is-recorded-once");
    }

    @Test
    void findsARigWhoseLastCheckOfTheSameKindWasBad() {
        workshop.define("specification", "LEAK");
        workshop.plant()
                .say(
                        "verification",
                        "09:00",
                        Map.of("equipment", "RIG", "verdict", "bad", "specification", "LEAK", "evidence", "leaks"));
        assertThat(workshop.pull("09:30", "T1", "RCV R1", "pass").findings()).isEmpty();
        workshop.check("calibration", "10:00", "RIG", "bad");
        String bad = workshop.plant().lastId();
        assertThat(rules(workshop.pull("10:30", "T2", "RCV R2", "pass")))
                .containsExactly("equipment-was-good-at-its-last-check");
        workshop.plant().undo("10:40", bad);
        assertThat(workshop.pull("10:45", "T3", "RCV R3", "pass").findings()).isEmpty();
    }

    @Test
    void refusesToTestAHeldUnitWhenAsked() {
        workshop.plant().holdUnit("09:00", "RCV R1", "scratched");
        assertThatThrownBy(() -> workshop.ask("test-run", "10:00", pulled("T1", "RCV R1", "pass")))
                .isInstanceOf(Refused.class)
                .hasMessage("Unit RCV R1 is on hold: scratched");
    }
}
