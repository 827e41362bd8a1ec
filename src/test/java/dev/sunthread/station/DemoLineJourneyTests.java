package dev.sunthread.station;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.access.Right;
import dev.sunthread.access.machine.TokenWords;
import dev.sunthread.access.machine.Tokens;
import dev.sunthread.demo.line.MachineData;
import dev.sunthread.journal.Restores;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Primary;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A panel of the demo plant, from its first receiver to its shipment: at its stations, with a tablet and by keys, and by a
 * program for fifteen of its modules; ovens, lamp, rooms and rigs tell by their interface.
 */
@Tag("browser")
@SunthreadTest(webEnvironment = WebEnvironment.RANDOM_PORT)
class DemoLineJourneyTests {

    private static final JsonMapper JSON = JsonMapper.shared();
    private static final Clocks CLOCK = new Clocks();

    /** A clock that the test sets forward, so that nobody waits for an oven. */
    private static final class Clocks extends Clock {
        private volatile Duration ahead = Duration.ZERO;

        void to(Instant then) {
            ahead = Duration.between(Instant.now(), then);
        }

        void pass(Duration time) {
            ahead = ahead.plus(time);
        }

        OffsetDateTime now() {
            return OffsetDateTime.now(this).truncatedTo(ChronoUnit.MILLIS);
        }

        @Override
        public ZoneId getZone() {
            return ZoneId.of("UTC");
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return Clock.offset(Clock.system(zone), ahead);
        }

        @Override
        public Instant instant() {
            return Instant.now().plus(ahead);
        }
    }

    @TestConfiguration
    static class TimeOfTheTest {

        @Bean
        @Primary
        Clock settable() {
            return CLOCK;
        }
    }

    @LocalServerPort
    int port;

    @Autowired
    Restores restores;

    @Autowired
    Tokens tokens;

    @Autowired
    ApplicationContext context;

    @Autowired
    JdbcClient jdbc;

    private final MachineData machines = new MachineData();
    private final Map<String, String> secrets = new HashMap<>();
    private final HttpClient http = HttpClient.newHttpClient();
    private int runs;

    @Test
    void aNewPanelIsMadeAtTheStationsOfTheDemoPlantFromStartToShipment() throws Exception {
        restores.run(new ByteArrayInputStream(MachineData.journal().getBytes(StandardCharsets.UTF_8)), restored -> {});
        CLOCK.to(OffsetDateTime.parse("2026-11-24T06:00:00+01:00").toInstant());
        StationDevice.people(context);
        receive();
        List<Integer> others = IntStream.rangeClosed(2, 16).boxed().toList();
        work(new DemoWork(new Program(), others));
        try (StationDevice device = StationDevice.at(port, "BOND-1")) {
            DemoWork work = new DemoWork(new Tablet(device), List.of(1));
            work(work);
            work.weld("PN-901", IntStream.rangeClosed(1, 16).boxed().toList());
            CLOCK.pass(Duration.ofMinutes(30));
            test("PAN-400", "PN-901", "PAN-GND", "RIG-G1");
            work.packAndShip("PN-901");
        }
        everythingIsInThePanelAndNothingIsLeftToFindOut();
    }

    /** From the first bond to the test of the modules. */
    private void work(DemoWork work) throws Exception {
        work.bond();
        cure("TIM-150", "OVEN-1", Duration.ofMinutes(130), work.allReceivers(), "RCV-100");
        work.sort();
        work.fasten();
        work.solderAndCoat();
        CLOCK.pass(Duration.ofMinutes(30));
        work.optics();
        List<String> walls = work.modules().stream().map(DemoWork::wall).toList();
        cure("UV-365", "UVT-1", Duration.ofMinutes(3), walls, "WAL-200");
        for (String wall : walls) {
            test("WAL-200", wall, "WAL-IV", "RIG-W2");
        }
        work.seal();
        CLOCK.pass(Duration.ofMinutes(30));
        work.mirror();
        CLOCK.pass(Duration.ofMinutes(30));
        work.glass();
        List<String> modules = work.modules().stream().map(DemoWork::module).toList();
        cure("DWELL-24", "ROOM-1", Duration.ofHours(24), modules, "MOD-300");
        for (String module : modules) {
            test("MOD-300", module, "MOD-IV", "RIG-M1");
        }
    }

    private void receive() throws Exception {
        List<String> items = jdbc.sql("SELECT number FROM catalog.item WHERE tracking = 'LOT' ORDER BY 1")
                .query(String.class)
                .list();
        for (String item : items) {
            Map<String, Object> receipt = new TreeMap<>(Map.of("lot", "NEW-" + item, "item", item, "quantity", "9000"));
            receipt.put(
                    "unitOfMeasure",
                    jdbc.sql("SELECT unit_of_measure FROM catalog.item WHERE number = ?")
                            .param(item)
                            .query(String.class)
                            .single());
            tell("STORE-1", "receipt", receipt);
        }
    }

    private void cure(String recipe, String equipment, Duration length, List<String> serials, String item)
            throws Exception {
        OffsetDateTime start = CLOCK.now();
        CLOCK.pass(length);
        Map<String, Object> run =
                new TreeMap<>(Map.of("run", "NEW-" + ++runs, "recipe", recipe, "equipment", equipment));
        run.put("startedAt", start.toString());
        run.put(
                "units",
                serials.stream().map(serial -> Plant.unit(item + " " + serial)).toList());
        run.put("profile", machines.profile(recipe, equipment, start, start.plus(length)));
        tell("OVEN", "cure-run", run, start.plus(length));
    }

    private void test(String item, String serial, String specification, String rig) throws Exception {
        Map<String, Object> run = new TreeMap<>(Map.of("run", "NEW-T-" + serial, "specification", specification));
        run.putAll(Map.of("unit", Plant.unit(item + " " + serial), "equipment", rig, "verdict", "pass"));
        if (specification.equals("PAN-GND")) {
            run.put(
                    "readings",
                    List.of(reading("ground", "0.45", "10", "3"), reading("insulation", "1000", "0.00000002", "60")));
        } else {
            run.put("sweeps", List.of(machines.sweep(specification)));
        }
        tell("TEST-1", "test-run", run);
    }

    private static Map<String, String> reading(String path, String volts, String amperes, String seconds) {
        return Map.of("path", path, "volts", volts, "amperes", amperes, "seconds", seconds);
    }

    private void tell(String station, String kind, Map<String, Object> body) throws Exception {
        tell(station, kind, body, CLOCK.now());
    }

    private void tell(String station, String kind, Map<String, Object> body, OffsetDateTime at) throws Exception {
        Map<String, Object> envelope =
                new TreeMap<>(Map.of("id", UUID.randomUUID().toString(), "kind", kind));
        envelope.putAll(
                Map.of("version", 1, "occurredAt", at.toString(), "actor", "m", "source", station, "body", body));
        send(station, "/api/v1/envelopes/do", JSON.writeValueAsString(envelope));
    }

    private String send(String station, String address, String body) throws IOException, InterruptedException {
        String secret = secrets.computeIfAbsent(
                station,
                one -> tokens.make(new TokenWords(
                        "m-" + one.toLowerCase(), "machine of the line", one, Set.of(Right.WORK), null)));
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + address))
                .header("Authorization", "Bearer " + secret)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build();
        HttpResponse<String> answer = http.send(request, HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(answer.body() + body).isBetween(200, 201);
        return answer.body();
    }

    private void everythingIsInThePanelAndNothingIsLeftToFindOut() {
        assertThat(names("SELECT f.rule FROM inbox.finding f JOIN ledger.entry e ON e.number = f.entry"
                        + " WHERE e.recorded_by IS NOT NULL AND e.occurred_at > '2026-11-24'"))
                .isEmpty();
        assertThat(names("SELECT s.consignee FROM production.shipment s JOIN production.shipment_unit USING (entry)"
                        + " JOIN production.unit u ON u.id = unit WHERE u.serial = 'PN-901'"))
                .containsExactly("Thornfield Array");
        assertThat(names("SELECT serial FROM production.unit WHERE serial LIKE 'RC-9%'"))
                .hasSize(192);
    }

    private List<String> names(String sql) {
        return jdbc.sql(sql).query(String.class).list();
    }

    /** Scans by the machine interface of a station. */
    private final class Program implements Hands {
        private String station = "";

        @Override
        public void at(String other) {
            station = other;
        }

        @Override
        public void scan(String text, String says) throws Exception {
            String scan = JSON.writeValueAsString(
                    List.of(Map.of("id", UUID.randomUUID().toString(), "text", text, "kept", false)));
            JsonNode answer =
                    JSON.readTree(send(station, "/api/v1/scans", scan)).get(0);
            assertThat(answer.path("outcome").asString())
                    .as(text + " " + answer)
                    .isEqualTo("ACCEPTED");
            assertThat(answer.path("said").asString("") + " "
                            + answer.path("remedy").asString(""))
                    .contains(says);
        }
    }

    /** A person at a tablet that is carried from station to station. */
    private record Tablet(StationDevice device) implements Hands {

        @Override
        public void at(String station) {
            device.moveTo(station);
        }

        @Override
        public void scan(String text, String says) {
            device.scan(text, says);
        }
    }
}
