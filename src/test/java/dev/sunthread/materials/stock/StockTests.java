package dev.sunthread.materials.stock;

import static dev.sunthread.materials.Store.broken;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.body.Unreadable;
import dev.sunthread.materials.Store;
import dev.sunthread.testing.SunthreadTest;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Containers, and the acts on the stock of a lot: what is written, and what is refused or noted. */
@SunthreadTest
class StockTests {

    @Autowired
    Door door;

    @Autowired
    JdbcClient jdbc;

    Store store;

    @BeforeEach
    void stocked() {
        store = Store.stocked(door);
    }

    @Test
    void containerToppedUpHoldsAMixWithoutAFinding() {
        assertThat(broken(store.fill("08:00", "A", "c1 30", "c2 30"))).isEmpty();
        assertThat(broken(store.fill("08:10", "B", "c1 10"))).isEmpty();
        assertThat(rows("""
                        SELECT concat(c.label, ' ', l.number, ' ', f.quantity, f.unit_of_measure)
                        FROM materials.container_filling f JOIN materials.container c ON c.id = f.container
                        JOIN materials.lot l ON l.id = f.lot ORDER BY 1
                        """)).containsExactly("c1 A 30g", "c1 B 10g", "c2 A 30g");
        assertThat(broken(charge("08:20", "A", "c1"))).isEmpty();
        assertThat(broken(store.plant.discharge("08:25", "V1"))).isEmpty();
        assertThat(broken(charge("08:30", "B", "c1"))).isEmpty();
    }

    @Test
    void refusesToFillFromAHeldLotAndToNameAContainerTwice() {
        store.hold("07:00", "A");
        assertThat(store.refusal(
                        "container", "08:00", Map.of("lot", "A", "containers", List.of(Map.of("label", "c1")))))
                .startsWith("Lot A is on hold");
        assertThatThrownBy(() -> store.fill("08:00", "B", "c1", "c1"))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining("body.containers: names a container twice");
    }

    @Test
    void chargeFromAContainerOfAnotherLotIsNoted() {
        store.fill("08:00", "A", "c1");
        assertThat(broken(charge("08:20", "B", "c1"))).containsExactly("container-holds-the-lot");
        assertThat(rows("""
                        SELECT concat(c.label, ' ', l.number) FROM materials.charge h
                        JOIN materials.container c ON c.id = h.container JOIN materials.lot l ON l.id = h.lot
                        """)).containsExactly("c1 B");
    }

    @Test
    void aVoidedFillingIsNoLongerHeldAgainstACharge() {
        store.fill("08:00", "A", "c1");
        store.plant.undo("08:10", store.plant.lastId());
        assertThat(broken(charge("08:20", "B", "c1"))).isEmpty();
    }

    @Test
    void openingAndMovingNeedAContainerThatWasFilled() {
        assertThat(broken(store.move("08:00", "c9", "frozen"))).containsExactly("container-is-filled");
        assertThat(store.refusal("container-opening", "08:00", Map.of("container", "c9")))
                .isEqualTo("Nothing is recorded as filled into container c9");
        store.fill("07:00", "A", "c1");
        assertThat(broken(store.move("08:00", "c1", "room"))).isEmpty();
        assertThat(broken(store.plant.say("container-opening", "08:10", Map.of("container", "c1"))))
                .isEmpty();
        assertThat(rows("SELECT place || ' ' || storage FROM materials.container_move ORDER BY entry DESC LIMIT 1"))
                .containsExactly("room place ROOM");
    }

    @Test
    void everyActIsKeptUnderItsOwnWord() {
        for (String act : List.of("count", "issue", "stock-return", "waste", "sample")) {
            assertThat(broken(store.act(act, "08:00", "A", "2.50"))).isEmpty();
        }
        assertThat(rows("SELECT way || ' ' || quantity || unit_of_measure FROM materials.stock_change ORDER BY entry"))
                .containsExactly("COUNT 2.50g", "ISSUE 2.50g", "STOCK_RETURN 2.50g", "WASTE 2.50g", "SAMPLE 2.50g");
    }

    @Test
    void onlyACountFindsNothing() {
        assertThat(broken(store.act("count", "08:00", "A", "0"))).isEmpty();
        assertThatThrownBy(() -> store.act("waste", "08:00", "A", "0")).hasMessage("body.quantity: is nought");
        assertThatThrownBy(() -> store.act("count", "08:00", "A", "-1"))
                .hasMessage("body.quantity: is less than nought");
    }

    @Test
    void aHeldLotIsNotIssuedButMayBeSampled() {
        store.hold("07:00", "A");
        assertThat(broken(store.act("sample", "08:00", "A", "1"))).isEmpty();
        assertThat(store.refusal("issue", "08:00", Map.of("lot", "A", "quantity", "1", "unitOfMeasure", "g")))
                .startsWith("Lot A is on hold");
    }

    @Test
    void lotEndsOnceAndIsNotTakenAfterwards() {
        assertThat(broken(store.end("12:00", "A", "used-up"))).isEmpty();
        assertThat(broken(store.plant.charge("11:00", "A", "V1"))).isEmpty();
        assertThat(broken(store.plant.charge("13:00", "A", "V2"))).containsExactly("lot-is-not-ended");
        assertThat(broken(store.end("14:00", "A", "scrapped"))).containsExactly("lot-ends-once");
    }

    @Test
    void oneContainerOfALotEndsWithoutTheOthers() {
        store.fill("08:00", "A", "c1", "c2");
        for (String container : List.of("c1", "c2")) {
            assertThat(broken(store.plant.say(
                            "lot-ending", "12:00", Map.of("lot", "A", "container", container, "why", "returned"))))
                    .isEmpty();
        }
        assertThat(broken(store.plant.charge("13:00", "A", "V2"))).isEmpty();
    }

    @Test
    void nothingIsLeftToMeasureOfALotThatWasUsedUp() {
        assertThatThrownBy(() -> store.plant.say(
                        "lot-ending",
                        "12:00",
                        Map.of("lot", "A", "why", "used-up", "quantity", "3", "unitOfMeasure", "g")))
                .hasMessage("body.quantity: is given where nothing was left");
    }

    @Test
    void whatAMixingPositionHeldGoesOnAsANewLotOfTheSameItem() {
        store.plant.charge("08:00", "A", "V1");
        var unloaded =
                store.plant.say("discharge", "09:00", Map.of("station", "BOND", "position", "V1", "into", "REST-1"));
        assertThat(broken(unloaded)).isEmpty();
        assertThat(rows("""
                        SELECT concat(l.number, ' ', m.way, ' ', i.number) FROM materials.discharge d
                        JOIN materials.lot l ON l.id = d.into_lot JOIN materials.lot_making m ON m.entry = d.entry AND m.lot = l.id
                        JOIN catalog.item i ON i.id = m.item
                        """)).containsExactly("REST-1 UNLOADING ADH");
        assertThat(broken(store.plant.charge("10:00", "REST-1", "V1"))).isEmpty();
    }

    @Test
    void whatIsUnloadedWhileItsLotIsHeldIsHeldToo() {
        store.plant.charge("08:00", "A", "V1");
        store.hold("08:30", "A");
        store.plant.say("discharge", "09:00", Map.of("station", "BOND", "position", "V1", "into", "REST-1"));
        assertThat(broken(store.plant.charge("10:00", "REST-1", "V1"))).containsExactly("lot-is-not-on-hold");
    }

    private dev.sunthread.ledger.Acceptance charge(String time, String lot, String container) {
        return store.plant.say(
                "charge", time, Map.of("lot", lot, "station", "BOND", "position", "V1", "container", container));
    }

    private List<String> rows(String sql) {
        return jdbc.sql(sql).query((row, number) -> row.getString(1)).list();
    }
}
