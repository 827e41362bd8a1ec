package dev.sunthread.station;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Browser;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Wire;
import jakarta.servlet.Filter;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A station whose server hangs, is slow or fails: no scan is lost or doubled, and each keeps its order and its time. */
@Tag("browser")
@SunthreadTest(webEnvironment = WebEnvironment.RANDOM_PORT)
class FaultyServerTests {

    private static final List<String> RECEIVERS = List.of("R0001", "R0002", "R0003", "R0004");

    /** A server that fails at one text, whenever it is scanned. */
    @TestConfiguration
    static class Failing {

        @Bean
        Filter failsAtOneText() {
            return (request, answer, chain) -> {
                if (((HttpServletRequest) request).getRequestURI().equals("/work")
                        && "POISON".equals(request.getParameter("text"))) {
                    ((HttpServletResponse) answer).sendError(HttpServletResponse.SC_INTERNAL_SERVER_ERROR);
                } else {
                    chain.doFilter(request, answer);
                }
            };
        }
    }

    @LocalServerPort
    int port;

    @Autowired
    Door door;

    @Autowired
    ApplicationContext context;

    @Autowired
    JdbcClient jdbc;

    @BeforeEach
    void release() {
        ShopFloor.released(door);
        StationDevice.people(context);
    }

    private int count(String sql) {
        return jdbc.sql(sql).query(Integer.class).single();
    }

    private static void until(StationDevice device, BooleanSupplier what) {
        Browser.waiting(device.page()).withMessage(device::text).until(any -> what.getAsBoolean());
    }

    private static void isAway(StationDevice device, boolean away) {
        until(device, () -> device.page().findElement(By.id("away")).isDisplayed() == away);
    }

    private static StationDevice loaded(Wire wire) throws Exception {
        return StationDevice.at(wire.port(), "GLUE")
                .scan("A-1", "Where is A-1 loaded?")
                .scan("V1", "A-1 is loaded at V1.");
    }

    private static void bondAll(StationDevice device) {
        RECEIVERS.forEach(receiver -> device.type(receiver).type("C-1"));
    }

    private void everyReceiverIsBondedInOrderBefore(OffsetDateTime end) {
        assertThat(jdbc.sql("""
                        SELECT u.serial FROM production.step s JOIN production.step_unit su ON su.entry = s.entry
                        JOIN production.unit u ON u.id = su.unit JOIN ledger.entry e ON e.number = s.entry
                        WHERE s.operation = 'bond' AND e.occurred_at < ? ORDER BY e.occurred_at
                        """).param(end).query(String.class).list()).isEqualTo(RECEIVERS);
        assertThat(count("SELECT count(*) FROM inbox.line")).isZero();
        assertThat(count("""
                        SELECT count(*) FROM station.scan a JOIN station.scan b USING (page)
                        WHERE a.sequence < b.sequence AND a.scanned_at >= b.scanned_at
                        """)).isZero();
    }

    @Test
    void aServerThatTakesScansAndNeverAnswersIsAwayAndThenHasThemAllInTheirOrder() throws Exception {
        try (Wire wire = new Wire(port);
                StationDevice device = loaded(wire)) {
            wire.holdRequests();
            bondAll(device);
            isAway(device, true);
            OffsetDateTime end = OffsetDateTime.now();
            wire.letGo();
            isAway(device, false);
            everyReceiverIsBondedInOrderBefore(end);
        }
    }

    @Test
    void aServerWhoseAnswersComeTooLateDoesNothingTwice() throws Exception {
        try (Wire wire = new Wire(port);
                StationDevice device = loaded(wire)) {
            wire.holdAnswers();
            bondAll(device);
            isAway(device, true);
            OffsetDateTime end = OffsetDateTime.now();
            wire.letGo();
            isAway(device, false);
            everyReceiverIsBondedInOrderBefore(end);
        }
    }

    @Test
    void aServerThatFailsAtEverythingHasAllOnceItIsMended() throws Exception {
        try (Wire wire = new Wire(port);
                StationDevice device = loaded(wire)) {
            wire.fail(true);
            bondAll(device);
            isAway(device, true);
            OffsetDateTime end = OffsetDateTime.now();
            wire.fail(false);
            isAway(device, false);
            everyReceiverIsBondedInOrderBefore(end);
        }
    }

    @Test
    void aScanThatTheServerFailsAtGoesToTheInboxAndTheNextGoesOn() throws Exception {
        try (Wire wire = new Wire(port);
                StationDevice device = loaded(wire)) {
            device.type("R0001").type("POISON").type("C-1");
            until(device, () -> count("SELECT count(*) FROM production.step WHERE operation = 'bond'") == 1);
            isAway(device, false);
            assertThat(jdbc.sql("SELECT text FROM inbox.line")
                            .query(String.class)
                            .list())
                    .containsExactly("POISON");
        }
    }
}
