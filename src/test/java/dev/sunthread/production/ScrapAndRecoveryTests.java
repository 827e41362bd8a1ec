package dev.sunthread.production;

import static dev.sunthread.testing.Workshop.rules;
import static dev.sunthread.testing.Workshop.sentences;
import static dev.sunthread.testing.Workshop.unit;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.ledger.Acceptance;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.body.Unreadable;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Workshop;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Units that were scrapped, and what was taken out of units into lots. */
@SunthreadTest
class ScrapAndRecoveryTests {

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
    void findsEveryLaterUseOfAScrappedUnit() {
        assertThat(workshop.scrap("10:00", "RCV R1").findings()).isEmpty();
        assertThat(sentences(workshop.step("11:00", "bond", "RCV R1")))
                .containsExactly("Unit RCV R1 was scrapped before");
        assertThat(rules(workshop.bake("12", "C1", "RCV R1"))).containsExactly("unit-is-not-scrapped");
        assertThat(rules(workshop.pull("12:00", "T1", "RCV R1", "pass"))).containsExactly("unit-is-not-scrapped");
        assertThat(rules(workshop.plant().install("12:30", "RCV R1", "WALL W1", "1")))
                .containsExactly("unit-is-not-scrapped");
        assertThat(rules(workshop.scrap("13:00", "RCV R1"))).containsExactly("unit-is-scrapped-once");
    }

    @Test
    void whatWasDoneBeforeOrAfterAVoidedScrappingBreaksNothing() {
        workshop.scrap("10:00", "RCV R1");
        assertThat(workshop.step("09:00", "bond", "RCV R1").findings()).isEmpty();
        workshop.scrap("10:00", "RCV R2");
        workshop.plant().undo("10:30", workshop.plant().lastId());
        assertThat(workshop.step("11:00", "bond", "RCV R2").findings()).isEmpty();
    }

    @Test
    void whatIsInsideAScrappedUnitCanStillBeTakenOut() {
        workshop.plant().install("09:00", "RCV R1", "WALL W1", "1");
        workshop.scrap("10:00", "WALL W1");
        assertThat(workshop.plant().remove("11:00", "RCV R1", "WALL W1").findings())
                .isEmpty();
        assertThat(recover("ADH", "A-90", "g").findings()).isEmpty();
        assertThat(workshop.step("12:00", "bond", "RCV R1").findings()).isEmpty();
    }

    @Test
    void aRecoveryIsTheMakingOfItsLot() {
        recover("ADH", "A-90", "g");
        assertThat(jdbc.sql("""
                        SELECT m.way || ' of ' || l.number || ': ' || m.quantity || ' ' || m.unit_of_measure || ' of ' || i.number
                        FROM materials.lot_making m JOIN production.recovery r USING (entry, lot)
                        JOIN materials.lot l ON l.id = m.lot JOIN catalog.item i ON i.id = m.item
                        """).query(String.class).list()).containsExactly("RECOVERY of A-90: 2.5 g of ADH");
    }

    @Test
    void findsARecoveryIntoALotOfAnotherItem() {
        workshop.plant().receipt("07:00", "A-17", "ADH");
        assertThat(recover("ADH", "A-17", "g").findings()).isEmpty();
        assertThat(rules(recover("CELL", "A-17", "pcs"))).containsExactly("lot-is-of-one-item");
    }

    @Test
    void aRecoveryGoesIntoALotInTheUnitOfItsItem() {
        assertThatThrownBy(() -> recover("RCV", "A-17", "pcs"))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining("which is tracked by serial");
        assertThatThrownBy(() -> recover("ADH", "A-17", "kg"))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining("is \"kg\" where the item has \"g\"");
    }

    private Acceptance recover(String item, String lot, String unitOfMeasure) {
        return workshop.plant()
                .say(
                        "recovery",
                        "11:30",
                        Map.of(
                                "unit",
                                unit("WALL W1"),
                                "lot",
                                lot,
                                "item",
                                item,
                                "quantity",
                                "2.5",
                                "unitOfMeasure",
                                unitOfMeasure));
    }
}
