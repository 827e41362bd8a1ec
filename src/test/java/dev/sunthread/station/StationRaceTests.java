package dev.sunthread.station;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.access.Role;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Together;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Two people at two stations scan one serial at once: exactly one gets it, and the other reads who did. */
@Tag("browser")
@SunthreadTest(webEnvironment = WebEnvironment.RANDOM_PORT)
class StationRaceTests {

    private static final int ROUNDS = 5;

    @LocalServerPort
    int port;

    @Autowired
    Door door;

    @Autowired
    ApplicationContext context;

    @Autowired
    JdbcClient jdbc;

    /** Receivers are bonded at two stations, where everything is loaded. */
    @BeforeEach
    void release() {
        ShopFloor floor = ShopFloor.released(door);
        StationDevice.people(context).add("op-2", Role.OPERATOR);
        floor.plant().station("GLUE-2", "5", "V1", "V2");
        Map<String, Object> bond = ShopFloor.operation("bond", "GLUE", List.of("CELL", "TIM"));
        bond.put("stations", List.of("GLUE", "GLUE-2"));
        floor.route("REC", "B", bond);
        for (String station : List.of("GLUE", "GLUE-2")) {
            charge(floor, station, "V1", "A-1");
            charge(floor, station, "V2", "C-1");
        }
    }

    private static void charge(ShopFloor floor, String station, String position, String lot) {
        floor.plant().say("charge", "08:00", Map.of("lot", lot, "station", station, "position", position));
    }

    @Test
    void exactlyOneGetsASerialAndTheOtherIsToldWhoDid() throws Exception {
        try (StationDevice one = StationDevice.at(port, "GLUE", "op-1");
                StationDevice other = StationDevice.at(port, "GLUE-2", "op-2")) {
            for (int round = 1; round <= ROUNDS; round++) {
                String serial = "R%04d".formatted(round);
                List<String> said = Together.atOnce(List.of(scan(one, serial), scan(other, serial)));
                assertThat(count("birth", serial)).isEqualTo(1);
                assertThat(count("step_unit", serial)).isEqualTo(1);
                String loser = said.get(0).contains("Refused") ? said.get(0) : said.get(1);
                String winner = said.get(0).contains("Refused") ? said.get(1) : said.get(0);
                assertThat(winner).contains("Accepted", "bond is done on " + serial);
                assertThat(loser)
                        .contains("Refused")
                        .containsPattern(winner.contains("op-1") ? "by op-1 at GLUE" : "by op-2 at GLUE-2");
            }
        }
    }

    private static Callable<String> scan(StationDevice device, String serial) {
        return () -> device.scan(serial, serial).text();
    }

    private int count(String table, String serial) {
        return jdbc.sql("SELECT count(*) FROM production." + table
                        + " t JOIN production.unit u ON u.id = t.unit WHERE u.serial = ?")
                .param(serial)
                .query(Integer.class)
                .single();
    }
}
