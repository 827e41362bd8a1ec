package dev.sunthread.production;

import static dev.sunthread.testing.Workshop.rules;
import static dev.sunthread.testing.Workshop.sentences;
import static dev.sunthread.testing.Workshop.unit;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.kernel.Refused;
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

/** What is put on carriers and taken off them. */
@SunthreadTest
class CarrierKindTests {

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
    void carriesWhatWasLoadedUntilItIsUnloaded() {
        assertThat(workshop.load("09:00", "TRAY", "RCV R1", "RCV R2").findings())
                .isEmpty();
        assertThat(workshop.unload("09:30", "TRAY", "RCV R1").findings()).isEmpty();
        assertThat(carried()).containsExactly("R1 on TRAY for 00:30:00", "R2 on TRAY for ever");
    }

    @Test
    void anUnloadThatNamesNothingTakesEverythingOff() {
        workshop.load("09:00", "TRAY", "RCV R1", "RCV R2");
        workshop.unload("09:30", "TRAY");
        assertThat(carried()).containsExactly("R1 on TRAY for 00:30:00", "R2 on TRAY for 00:30:00");
        assertThat(workshop.load("09:30", "OTHER", "RCV R1").findings()).isEmpty();
    }

    @Test
    void aVoidedUnloadTookNothingOff() {
        workshop.load("09:00", "TRAY", "RCV R1");
        workshop.unload("09:30", "TRAY");
        workshop.plant().undo("09:31", workshop.plant().lastId());
        assertThat(carried()).containsExactly("R1 on TRAY for ever");
    }

    @Test
    void findsAUnitOnTwoCarriersInWhicheverOrderItIsTold() {
        workshop.load("09:00", "TRAY", "RCV R1");
        assertThat(sentences(workshop.load("09:30", "OTHER", "RCV R1")))
                .containsExactly(
                        "Unit RCV R1 was put on carrier OTHER while recorded as being on carrier TRAY, put there by op-1"
                                + " at test on 2026-03-10 at 09:00:00");
        workshop.load("09:30", "TRAY", "RCV R2");
        assertThat(rules(workshop.load("09:00", "OTHER", "RCV R2"))).containsExactly("nothing-is-on-two-carriers");
    }

    @Test
    void findsAUnitThatOneLoadNamesTwice() {
        assertThat(rules(workshop.load("09:00", "TRAY", "RCV R1", "RCV R1")))
                .containsExactly("nothing-is-on-two-carriers");
    }

    @Test
    void findsAnOccupiedPosition() {
        workshop.loadAt("09:00", "TRAY", "A1", "RCV R1");
        assertThat(workshop.loadAt("09:10", "TRAY", "A2", "RCV R2").findings()).isEmpty();
        assertThat(sentences(workshop.loadAt("09:20", "TRAY", "A1", "RCV R3")))
                .containsExactly(
                        "Unit RCV R3 was put into position A1 of carrier TRAY, which is recorded as occupied then,"
                                + " filled by op-1 at test on 2026-03-10 at 09:00:00");
        workshop.unload("09:30", "TRAY");
        assertThat(workshop.loadAt("09:31", "TRAY", "A1", "RCV R4").findings()).isEmpty();
    }

    @Test
    void findsACarrierInItselfAtAnyDepth() {
        workshop.stack("09:00", "RACK", "PALLET");
        workshop.stack("09:01", "PALLET", "TRAY");
        assertThat(rules(workshop.stack("09:02", "TRAY", "RACK"))).containsExactly("no-carrier-is-in-itself");
        assertThatThrownBy(() -> workshop.stack("09:03", "TRAY", "TRAY"))
                .isInstanceOf(Unreadable.class)
                .hasMessage("body.loads: names the carrier itself");
    }

    @Test
    void findsWhatIsTakenOffThoughItIsNotOnTheCarrier() {
        workshop.load("09:00", "TRAY", "RCV R1");
        assertThat(sentences(workshop.unload("09:30", "OTHER", "RCV R1")))
                .containsExactly("Unit RCV R1 was taken off carrier OTHER, where it is not recorded as being then");
        assertThat(rules(workshop.unload("08:30", "TRAY", "RCV R1")))
                .containsExactly("only-what-is-on-the-carrier-is-taken-off");
    }

    @Test
    void findsAUnitWithoutBirth() {
        assertThat(rules(workshop.load("09:00", "TRAY", "RCV R9"))).containsExactly("unit-is-born");
    }

    @Test
    void refusesToPutAUnitOnASecondCarrierWhenAsked() {
        workshop.load("09:00", "TRAY", "RCV R1");
        assertThatThrownBy(() -> workshop.ask(
                        "carrier-load",
                        "09:30",
                        Map.of("carrier", "OTHER", "loads", List.of(Map.of("unit", unit("RCV R1"))))))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("recorded as being on carrier TRAY");
        assertThat(carried()).containsExactly("R1 on TRAY for ever");
    }

    private List<String> carried() {
        return jdbc.sql("""
                        SELECT u.serial || ' on ' || c.code || ' for ' || coalesce((upper(r.during) - lower(r.during))::text, 'ever')
                        FROM production.carrying r JOIN production.carrier c ON c.id = r.carrier
                        JOIN production.unit u ON u.id = r.unit ORDER BY 1
                        """).query((row, number) -> row.getString(1)).list();
    }
}
