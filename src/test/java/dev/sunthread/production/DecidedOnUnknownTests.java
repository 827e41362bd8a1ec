package dev.sunthread.production;

import static dev.sunthread.testing.Workshop.unit;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.sunthread.kernel.RuleBroken;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Manner;
import dev.sunthread.testing.Interlock;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Workshop;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;

/** What is held, passed or signed for has a name that a record gave it; a name that is only mistyped is told at once. */
@SunthreadTest
class DecidedOnUnknownTests {

    private static final String KNOWN = "what-is-decided-on-is-known";

    @Autowired
    Door door;

    @Autowired
    MockMvc pages;

    private Plant plant;
    private Interlock interlock;

    @BeforeEach
    void built() {
        plant = Workshop.released(door).plant();
        interlock = new Interlock(plant);
        plant.receipt("1 06:00", "A-17", "ADH");
        plant.birth("08:00", "PANEL", "PN-066");
    }

    @Test
    void refusesAHoldOnAnUnknownUnit() {
        assertThat(interlock
                        .of(KNOWN, "hold", "10:00", hold("units", unit("PANEL PN-0662")))
                        .sentence())
                .isEqualTo("No earlier record names unit PANEL PN-0662");
    }

    @Test
    void namesWhatIsCalledNearlySo() {
        RuleBroken refused = catchThrowableOfType(
                RuleBroken.class, () -> plant.say("hold", "10:00", hold("lots", "A-I7"), Manner.DO));
        assertThat(refused.reason()).isEqualTo("No earlier record names lot A-I7");
        assertThat(refused.remedy()).contains("nearly so are called: A-17;");
    }

    @Test
    void refusesAHoldOnAnUnknownContainer() {
        interlock.of(KNOWN, "hold", "10:00", hold("containers", "C-1"));
    }

    @Test
    void refusesASignatureForAnUnknownThing() {
        Map<String, Object> deviation =
                Map.of("unit", unit("PANEL PN-1"), "operation", "bond", "why", "Signed by the process engineer");
        interlock.of(KNOWN, "deviation", "10:00", deviation);
        plant.say("soft-rules", "1 00:00", Map.of("revision", "A", "rules", List.of("lot-is-not-expired")));
        interlock.of(
                KNOWN, "rule-pass", "10:00", Map.of("rule", "lot-is-not-expired", "lots", List.of("B"), "why", "x"));
    }

    @Test
    void holdsWhatAnyRecordNamed() {
        plant.step("09:00", "touch", "RCV", "R-UNBORN", List.of());
        interlock.none("hold", "10:00", hold("units", unit("RCV R-UNBORN")));
        interlock.none("hold", "10:00", hold("lots", "A-17"));
    }

    @Test
    void inProcessIsWhatIsThereAndNoMereName() throws Exception {
        String before = inProcess();
        plant.say("hold", "10:00", hold("units", unit("PANEL PN-0662")));
        assertThat(inProcess()).isEqualTo(before);
        plant.birth("10:10", "PANEL", "PN-0662");
        assertThat(inProcess()).isNotEqualTo(before).contains("PN-0662");
        plant.undo("10:20", plant.lastId());
        assertThat(inProcess()).isEqualTo(before);
    }

    private String inProcess() throws Exception {
        return pages.perform(MockMvcRequestBuilders.get("/in-process").param("format", "csv"))
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    private static Map<String, Object> hold(String of, Object what) {
        return Map.of(of, List.of(what), "reason", "notice of the supplier");
    }
}
