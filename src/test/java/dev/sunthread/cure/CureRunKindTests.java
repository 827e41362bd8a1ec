package dev.sunthread.cure;

import static dev.sunthread.testing.Workshop.rules;
import static dev.sunthread.testing.Workshop.sentences;
import static dev.sunthread.testing.Workshop.unit;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.body.Unreadable;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Workshop;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The loads that were cured. */
@SunthreadTest
class CureRunKindTests {

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
    void keepsWhatWasInTheLoad() {
        assertThat(workshop.bake("10", "C1", "RCV R1", "WALL W1").findings()).isEmpty();
        assertThat(workshop.bakeCarrier("11", "C2", "TRAY").findings()).isEmpty();
        assertThat(jdbc.sql("""
                        SELECT r.number || ' ' || coalesce(u.serial, c.code) FROM cure.run r JOIN cure.run_record d ON d.run = r.id
                        LEFT JOIN cure.run_unit m USING (entry) LEFT JOIN production.unit u ON u.id = m.unit
                        LEFT JOIN cure.run_carrier n USING (entry) LEFT JOIN production.carrier c ON c.id = n.carrier ORDER BY 1
                        """).query(String.class).list()).containsExactly("C1 R1", "C1 W1", "C2 TRAY");
    }

    @Test
    void findsARunNumberUsedForAnotherLoad() {
        workshop.bake("10", "C1", "RCV R1");
        String first = workshop.plant().lastId();
        assertThat(sentences(workshop.bake("11", "C1", "RCV R2")))
                .containsExactly("Cure run C1 was recorded before with another load");
        workshop.plant().undo("11:01", workshop.plant().lastId());
        workshop.plant().undo("11:02", first);
        assertThat(workshop.bake("12", "C1", "RCV R2").findings()).isEmpty();
    }

    @Test
    void findsUnitsThatMayNotMoveOn() {
        workshop.plant().holdUnit("09:00", "RCV R1", "scratched");
        assertThat(rules(workshop.bake("10", "C1", "RCV R1", "RCV R9")))
                .containsExactly("unit-is-not-on-hold", "unit-is-born");
    }

    @Test
    void findsAHeldUnitThatIsInTheLoadOnACarrier() {
        workshop.load("09:00", "TRAY", "RCV R1", "RCV R2");
        workshop.stack("09:01", "RACK", "TRAY");
        workshop.unload("09:10", "TRAY", "RCV R2");
        workshop.plant().holdUnit("09:20", "RCV R1", "scratched");
        workshop.plant().holdUnit("09:20", "RCV R2", "scratched");
        assertThat(sentences(workshop.bakeCarrier("10", "C1", "RACK")))
                .containsExactly("Unit RCV R1 is on hold: scratched");
        workshop.unload("10:10", "TRAY");
        workshop.load("10:20", "TRAY", "RCV R3");
        assertThat(workshop.bakeCarrier("11", "C2", "RACK").findings()).isEmpty();
    }

    @Test
    void findsAnOvenWhoseLastCheckWasBad() {
        workshop.check("calibration", "07:00", "OVEN", "good");
        workshop.check("verification", "09:00", "OVEN", "bad");
        assertThat(sentences(workshop.bake("10", "C1", "RCV R1")))
                .containsExactly("Equipment OVEN was found bad at its last check");
        assertThat(workshop.bake("08", "C2", "RCV R1").findings()).isEmpty();
        workshop.check("verification", "10:30", "OVEN", "good");
        assertThat(workshop.bake("12", "C3", "RCV R1").findings()).isEmpty();
    }

    @Test
    void findsAUnitThatOneLoadNamesTwice() {
        assertThat(rules(workshop.bake("10", "C1", "RCV R1", "RCV R1"))).containsExactly("nothing-is-in-a-load-twice");
    }

    @Test
    void refusesARunThatEndsBeforeItBegins() {
        Map<String, Object> body = Map.of(
                "run",
                "C1",
                "recipe",
                "BAKE",
                "equipment",
                "OVEN",
                "startedAt",
                "2026-03-10T10:00:01+01:00",
                "units",
                List.of(unit("RCV R1")));
        assertThatThrownBy(() -> workshop.plant().say("cure-run", "10:00", body))
                .isInstanceOf(Unreadable.class)
                .hasMessageStartingWith("body.startedAt: is later");
    }

    @Test
    void refusesWhatIsNotReleased() {
        Map<String, Object> body =
                Map.of("run", "C1", "recipe", "FRY", "equipment", "OVEN", "startedAt", "2026-03-10T09:00:00+01:00");
        assertThatThrownBy(() -> workshop.plant().say("cure-run", "10:00", body))
                .isInstanceOf(Unreadable.class)
                .hasMessage("body.recipe: names recipe \"FRY\", which is not released");
    }
}
