package dev.sunthread.quality;

import static dev.sunthread.testing.Workshop.unit;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.body.Unreadable;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Workshop;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Signed statements that something was not done. */
@SunthreadTest
class DeviationKindTests {

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
    void keepsWhatWasNotDone() {
        say(Map.of("unit", unit("RCV R1"), "operation", "bond", "item", "ADH", "why", "welded instead"));
        say(Map.of("lot", "A-17", "position", "base", "item", "ADH", "why", "bought mixed"));
        assertThat(jdbc.sql("""
                        SELECT coalesce(u.serial, l.number) || ' without ' || i.number || coalesce(' at ' || d.operation, '')
                          || coalesce(' as ' || d.position, '') || ', ' || d.why
                        FROM quality.deviation d JOIN catalog.item i ON i.id = d.item
                        LEFT JOIN production.unit u ON u.id = d.unit LEFT JOIN materials.lot l ON l.id = d.lot ORDER BY d.entry
                        """).query(String.class).list())
                .containsExactly("R1 without ADH at bond, welded instead", "A-17 without ADH as base, bought mixed");
    }

    @Test
    void refusesMoreOrLessThanOneSubjectAndOneThing() {
        isRefused(Map.of("unit", unit("RCV R1"), "why", "so"), "body.item: must be given");
        isRefused(Map.of("unit", unit("RCV R1"), "item", "ADH", "recipe", "BAKE", "why", "so"), "only one of them");
        isRefused(Map.of("item", "ADH", "why", "so"), "body.unit: must be given, or lot");
        isRefused(Map.of("unit", unit("RCV R1"), "recipe", "FRY", "why", "so"), "which is not released");
    }

    private void isRefused(Map<String, Object> body, String reason) {
        assertThatThrownBy(() -> say(body)).isInstanceOf(Unreadable.class).hasMessageContaining(reason);
    }

    private void say(Map<String, Object> body) {
        workshop.plant().say("deviation", "10:00", body);
    }
}
