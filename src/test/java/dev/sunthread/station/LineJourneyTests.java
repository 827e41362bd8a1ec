package dev.sunthread.station;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.access.Right;
import dev.sunthread.access.machine.TokenWords;
import dev.sunthread.access.machine.Tokens;
import dev.sunthread.ledger.Door;
import dev.sunthread.scan.label.LabelCode;
import dev.sunthread.testing.SunthreadTest;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Two receivers from birth to the shipment of their panel, by one tablet carried from station to station. */
@Tag("browser")
@SunthreadTest(webEnvironment = WebEnvironment.RANDOM_PORT)
class LineJourneyTests {

    private static final String PASSED = """
            {"id": "flash-%1$s", "kind": "test-run", "version": 1, "occurredAt": "%2$s", "actor": "rig-1", "source": "RIG-1",
             "body": {"run": "F-%1$s", "unit": {"item": "REC", "serial": "%1$s"}, "specification": "FLASH",
                      "equipment": "RIG-1", "verdict": "pass"}}
            """;

    @LocalServerPort
    int port;

    @Autowired
    Door door;

    @Autowired
    Tokens tokens;

    @Autowired
    ApplicationContext context;

    @Autowired
    JdbcClient jdbc;

    @BeforeEach
    void release() {
        LineFloor.released(door);
        StationDevice.people(context);
    }

    @Test
    void goesFromTheBirthOfReceiversToTheShipmentOfTheirPanelByKeysAlone() throws Exception {
        try (StationDevice device = StationDevice.at(port, "GLUE")) {
            bond(device, "R0001", "R0002");
            bake(device);
            flash(device, "R0001", "R0002");
            build(device);
            ship(device);
            everythingIsRecorded();
            theAdhesiveReachesThePanel(device);
            assertThat(device.browser().complaints()).noneMatch(one -> one.contains("Content Security Policy"));
        }
    }

    private static void bond(StationDevice device, String... receivers) throws Exception {
        device.picture("1-nothing").scan("A-1", "Where is A-1 loaded?").scan("V1", "A-1 is loaded at V1.");
        for (String receiver : receivers) {
            device.scan(receiver, receiver + " is in hand for: bond.").picture("2-in-hand");
            device.scan("C-1", "bond is done on " + receiver).picture("3-done");
        }
        String tray = LabelCode.carrier("TRAY-1");
        device.scan(tray, "TRAY-1 is empty").picture("4-tray");
        device.scan("R0001", "R0001 is on TRAY-1 at 1").scan("R0002", "R0002 is on TRAY-1 at 2");
        device.picture("5-tray").scan(".done", "Put aside");
    }

    private static void bake(StationDevice device) throws Exception {
        device.moveTo("HEAT").scan("OVEN-7", "OVEN-7: scan what goes in");
        device.scan("TRAY-1", "units with it: 2").picture("6-load");
        device.scan("OVEN-7", "OVEN-7 is running BAKE").picture("7-run");
        device.scan(".end", "is over and recorded").picture("8-run-over");
        device.scan("TRAY-1", "Units on TRAY-1: 2.").scan(".off", "TRAY-1 is clear");
    }

    private void flash(StationDevice device, String... receivers) throws Exception {
        String secret = tokens.make(new TokenWords("rig-1", "flasher", "DARK", Set.of(Right.WORK), null));
        device.moveTo("DARK");
        for (String receiver : receivers) {
            device.scan(receiver, "flash is done on " + receiver).picture("9-flash");
            var told = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/api/v1/envelopes/do"))
                    .header("Authorization", "Bearer " + secret)
                    .header("Content-Type", "application/json")
                    .POST(HttpRequest.BodyPublishers.ofString(
                            PASSED.formatted(receiver, OffsetDateTime.now().truncatedTo(ChronoUnit.MILLIS))))
                    .build();
            HttpResponse<String> answer = HttpClient.newHttpClient().send(told, BodyHandlers.ofString());
            assertThat(answer.statusCode()).as(answer.body()).isBetween(200, 201);
        }
    }

    private static void build(StationDevice device) throws Exception {
        device.moveTo("FLOOR").scan("W0001", "W0001 is in hand for: fasten.").picture("10-wall");
        device.scan("N-1", "N-1").scan("R0001", "R0001 is in P1 of W0001").picture("11-wall");
        device.scan("R0002", "fasten is done on W0001");
        device.moveTo("COATER").scan("K-1", "Where is K-1 loaded?").scan("POT", "K-1 is loaded at POT.");
        device.scan("W0001", "coat is done on W0001");
        device.moveTo("CLOSER").scan("M0001", "M0001 is in hand for: close.").scan("W0001", "close is done on M0001");
        device.moveTo("FRAMER").scan("P0001", "P0001 is in hand for: frame.").scan("M0001", "frame is done on P0001");
    }

    private static void ship(StationDevice device) throws Exception {
        device.moveTo("PACKER").scan(".ship", "Who does it go to?").picture("12-ship");
        device.scan("Thornfield Array", "Shipment to Thornfield Array").scan("P0001", "P0001 goes; 1 in the shipment");
        device.scan(".done", "to Thornfield Array is recorded; units: 1.").picture("13-shipped");
    }

    private void everythingIsRecorded() {
        assertThat(
                        names(
                                "SELECT kind FROM ledger.entry WHERE actor IN ('op-1', 'rig-1') AND source <> 'test' ORDER BY number"))
                .containsExactly(
                        "charge",
                        "birth",
                        "step",
                        "birth",
                        "step",
                        "carrier-load",
                        "carrier-load",
                        "cure-run",
                        "carrier-unload",
                        "step",
                        "test-run",
                        "step",
                        "test-run",
                        "birth",
                        "installation",
                        "installation",
                        "step",
                        "charge",
                        "step",
                        "birth",
                        "installation",
                        "step",
                        "birth",
                        "installation",
                        "step",
                        "shipment");
        assertThat(names("SELECT rule FROM inbox.finding")).isEmpty();
        assertThat(names("SELECT consignee FROM production.shipment")).containsExactly("Thornfield Array");
    }

    private List<String> names(String sql) {
        return jdbc.sql(sql).query(String.class).list();
    }

    private static void theAdhesiveReachesThePanel(StationDevice device) throws Exception {
        device.browser().go(device.address("/trace?way=forward&lot=A-1"));
        assertThat(device.page().findElements(By.cssSelector("main a")))
                .extracting(link -> link.getText())
                .contains("REC R0001", "REC R0002", "WAL W0001", "MOD M0001", "PAN P0001");
        assertThat(device.text()).contains("Thornfield Array");
        device.picture("14-trace").browser().go(device.address("/unit?item=PAN&serial=P0001"));
        assertThat(device.text()).contains("M0001", "frame", "Thornfield Array");
        device.picture("15-panel");
    }
}
