package dev.sunthread.genealogy;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.electrical.judging.TestVerdicts;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.RawData;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Workshop;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Which event opens the window of what a fault may have touched at a position. */
@SunthreadTest
class WindowsTests {

    @Autowired
    Door door;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    Sealer sealer;

    @Autowired
    TestVerdicts tests;

    private Workshop workshop;

    @BeforeEach
    void released() {
        workshop = Workshop.released(door);
        workshop.plant().say("specification", "2 00:00", RawData.powerRevision("B", "0.5"));
        workshop.plant()
                .say(
                        "fault",
                        "1 01:00",
                        Map.of("fault", "VOID", "revision", "A", "name", "Void", "tests", List.of("PULL")));
        workshop.check("verification", "07:00", "RIG", "good");
        workshop.step("09:00", "bond", "RCV R1");
    }

    @Test
    void opensAtTheLastUnitThatPassedByItsRawData() {
        workshop.plant().say("test-run", "10:00", RawData.swept("T1", "RCV R1", "pass", RawData.Points.of(1.0)));
        assertThat(opened()).contains("is that of test run T1");
    }

    /** A window that opened there would leave out units that the fault may have touched. */
    @Test
    void passThatRawDataDenyOrDoNotShowOpensNothing() {
        workshop.plant().say("test-run", "10:00", RawData.swept("T1", "RCV R1", "pass", RawData.Points.of(0.5)));
        workshop.step("09:10", "bond", "RCV R2");
        workshop.pull("10:10", "T2", "RCV R2", "pass");
        assertThat(opened()).startsWith("No unit made here before passed a test able to see VOID");
    }

    private String opened() {
        return new Windows(jdbc, sealer.seal(), tests)
                .ofPosition("BOND", "V1", "VOID", Plant.at("12:00"))
                .opened();
    }
}
