package dev.sunthread.station;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.access.Role;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.KnownPeople;
import dev.sunthread.testing.SunthreadTest;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;

/** A receiver is bonded again at its station, signed for there by badge, PIN and reason; keys alone, as a scanner does. */
@Tag("browser")
@SunthreadTest(webEnvironment = WebEnvironment.RANDOM_PORT)
class PassJourneyTests {

    @LocalServerPort
    int port;

    @Autowired
    Door door;

    @Autowired
    ApplicationContext context;

    @BeforeEach
    void release() {
        LineFloor floor = LineFloor.released(door).bonded("R0001");
        floor.plant().say("soft-rules", "1 00:00", Map.of("revision", "A", "rules", List.of("operation-is-done-once")));
        StationDevice.people(context).add("qe-1", Role.QUALITY);
    }

    @Test
    void anOperationIsDoneAgainOnceSomebodySignedAtTheStation() throws Exception {
        try (StationDevice device = StationDevice.at(port, "GLUE")) {
            device.scan("R0001", "bond is done on R0001 already, by op-1 at GLUE")
                    .picture("20-done-already");
            device.scan(".again", "Scan the unit").picture("21-again");
            device.scan("R0001", "Which operation is to be done again on R0001?")
                    .picture("22-which");
            device.scan(".1", "Unit REC R0001 has bond recorded already").picture("23-refused");
            assertThat(device.barriers()).isEmpty();
            device.scan(".pass", "Who signs that it is done all the same").picture("24-sign");
            assertThat(device.barriers()).isEmpty();
            device.page().switchTo().activeElement().sendKeys(Keys.ESCAPE);
            device.appears("#text:focus");
            device.scan(".pass", "Who signs that it is done all the same");
            sign(device, "BADGE-qe-1", "000111", "lifted at one corner");
            device.says("Badge and PIN don’t fit together").picture("25-wrong");
            sign(device, "BADGE-qe-1", KnownPeople.PIN, "lifted at one corner");
            device.says("R0001 is in hand again for: bond.").appears("#text:focus");
            device.scan("a-z", "Nothing recorded is called a-z");
            device.scan("a_2", "Was one of these meant?").picture("28-near");
            assertThat(device.barriers()).isEmpty();
            device.scan(".1", "A-2")
                    .scan("C-1", "passed by qe-1: lifted at one corner")
                    .picture("26-done");
            assertThat(device.browser().complaints()).noneMatch(one -> one.contains("Content Security Policy"));
            device.browser().go(device.address("/unit?item=REC&serial=R0001"));
            assertThat(device.page().findElement(By.tagName("main")).getText()).contains("A-1", "A-2", "qe-1");
            device.picture("27-unit");
        }
    }

    private static void sign(StationDevice device, String badge, String pin, String why) {
        device.appears("[name=badge]:focus");
        device.type(badge).appears("[name=pin]:focus");
        device.type(pin).appears("[name=why]:focus");
        device.type(why);
    }
}
