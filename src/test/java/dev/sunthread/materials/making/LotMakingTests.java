package dev.sunthread.materials.making;

import static dev.sunthread.materials.Store.blended;
import static dev.sunthread.materials.Store.broken;
import static dev.sunthread.materials.Store.with;
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

/** Lots made of lots: what is written, and what is refused or noted. */
@SunthreadTest
class LotMakingTests {

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
    void blendKeepsEveryComponentWithItsQuantity() {
        assertThat(broken(store.blend("08:00", "M", "A 10.50", "B"))).isEmpty();
        assertThat(made()).containsExactly("M BLEND ADH: A 10.50 g", "M BLEND ADH: B");
    }

    @Test
    void topUpAndKitAreKeptAsTheirWays() {
        store.plant.say("blend", "08:00", with(blended("T", "A", "B"), "way", "top-up"));
        store.plant.say("blend", "08:01", with(blended("K", "T"), "way", "kit"));
        assertThat(made()).containsExactly("K KIT ADH: T", "T TOP_UP ADH: A", "T TOP_UP ADH: B");
    }

    @Test
    void splitGivesEachPartTheItemOfTheDividedLot() {
        assertThat(broken(store.split("08:00", "A", "A1 40", "A2 60"))).isEmpty();
        assertThat(made()).containsExactly("A1 SPLIT ADH: A 40 g", "A2 SPLIT ADH: A 60 g");
    }

    @Test
    void mergeRegradeAndRelabelGoOnAsAnotherLot() {
        store.merge("08:00", "AB", "A", "B");
        store.plant.say("regrade", "08:01", Map.of("lot", "AB", "into", "AB-LOW", "item", "LOW"));
        store.plant.say("relabel", "08:02", Map.of("lot", "AB-LOW", "into", "X"));
        assertThat(made())
                .containsExactly(
                        "AB MERGE ADH: A", "AB MERGE ADH: B", "AB-LOW REGRADE LOW: AB", "X RELABEL LOW: AB-LOW");
    }

    @Test
    void lotsThatWereMadeNeedNoReceipt() {
        store.blend("08:00", "M", "A", "B");
        assertThat(broken(store.plant.charge("08:10", "M", "V1"))).isEmpty();
        assertThat(broken(store.plant.receipt("09:00", "M", "ADH"))).containsExactly("lot-is-received-once");
    }

    @Test
    void whatAVoidedMakingMadeHasNoOriginAnyMore() {
        store.blend("08:00", "M", "A", "B");
        store.plant.undo("08:05", store.plant.lastId());
        assertThat(broken(store.plant.charge("08:10", "M", "V1"))).containsExactly("lot-is-received");
    }

    @Test
    void refusesComponentsThatAreUnknownOrHeldOrGone() {
        store.hold("07:00", "B");
        store.end("07:00", "A", "used-up");
        assertThat(store.refusal("blend", "08:00", blended("M", "C"))).isEqualTo("Lot C has no receipt");
        assertThat(store.refusal("blend", "08:00", blended("M", "B"))).startsWith("Lot B is on hold");
        assertThat(store.refusal("blend", "08:00", blended("M", "A"))).startsWith("Nothing of lot A was left");
        assertThat(made()).isEmpty();
    }

    @Test
    void notesTheSameBesideWhatWasDoneAndHoldsWhatWasMadeOfAHeldLot() {
        store.hold("07:00", "B");
        assertThat(broken(store.blend("08:00", "M", "B", "C")))
                .containsExactly("lot-is-not-on-hold", "lot-is-received");
        assertThat(store.refusal("charge", "08:10", Map.of("lot", "M", "station", "BOND", "position", "V1")))
                .isEqualTo("Lot M is on hold: It was made of lot B while that was on hold");
    }

    @Test
    void lotIsMadeOnceAndNotOfItself() {
        store.blend("08:00", "M", "A");
        assertThat(broken(store.blend("08:10", "M", "B"))).containsExactly("lot-is-made-once");
        assertThat(broken(store.blend("08:20", "N", "A", "N"))).contains("lot-is-not-made-of-itself");
        assertThat(store.refusal("relabel", "08:30", Map.of("lot", "A", "into", "A")))
                .isEqualTo("Lot A was received or made before");
    }

    @Test
    void madeLotExpiresWithTheFirstOfItsComponentsUnlessItsOwnTimeIsStated() {
        store.plant.say("blend", "08:00", with(blended("M", "A"), "expiresAt", "2026-03-10T10:00:00+01:00"));
        store.split("08:10", "M", "M1");
        store.merge("08:20", "MB", "M1", "B");
        assertThat(broken(store.blend("09:59", "N", "MB"))).isEmpty();
        assertThat(broken(store.blend("10:00", "O", "MB"))).containsExactly("lot-is-not-expired");
        store.plant.say("blend", "09:30", with(blended("P", "MB"), "expiresAt", "2026-03-10T12:00:00+01:00"));
        assertThat(broken(store.blend("11:00", "Q", "P"))).isEmpty();
    }

    @Test
    void mergedLotsAreOfOneItem() {
        store.plant.say("regrade", "08:00", Map.of("lot", "B", "into", "B-LOW", "item", "LOW"));
        assertThat(broken(store.merge("08:10", "AB", "A", "B-LOW")))
                .containsExactly("lots-that-are-merged-are-of-one-item");
        assertThat(made()).contains("AB MERGE: A", "AB MERGE: B-LOW");
    }

    @Test
    void quantitiesAreInTheUnitOfTheLot() {
        Map<String, Object> pieces = Map.of("lot", "A", "quantity", "3", "unitOfMeasure", "pcs");
        assertThat(broken(store.plant.say("blend", "08:00", with(blended("M", "A"), "components", List.of(pieces)))))
                .containsExactly("quantity-is-in-the-unit-of-the-lot");
        assertThatThrownBy(() -> store.plant.say(
                        "blend", "08:00", with(with(blended("N", "A"), "quantity", "3"), "unitOfMeasure", "pcs")))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining("where the item has \"g\"");
    }

    @Test
    void componentComesFromAContainerThatHoldsIt() {
        store.fill("07:00", "A", "c1");
        store.fill("07:00", "B", "c2");
        store.fill("07:10", "A", "c2");
        assertThat(store.refusal("blend", "08:00", fromContainer("B", "c1")))
                .isEqualTo("Container c1 is recorded as filled with another lot than B");
        assertThat(broken(store.plant.say("blend", "08:00", fromContainer("B", "c2"))))
                .isEmpty();
        assertThat(broken(store.plant.say("split", "08:00", split("A", "c3")))).isEmpty();
    }

    private static Map<String, Object> fromContainer(String lot, String container) {
        return with(blended("M-" + container, lot), "components", List.of(Map.of("lot", lot, "container", container)));
    }

    private static Map<String, Object> split(String lot, String container) {
        return Map.of("lot", lot, "container", container, "into", List.of(Map.of("lot", lot + "-1")));
    }

    private List<String> made() {
        return jdbc.sql("""
                        SELECT concat(l.number, ' ', m.way, ' ' || i.number, ': ', c.number, ' ' || n.quantity, ' ' || n.unit_of_measure)
                        FROM materials.lot_making m JOIN materials.lot l ON l.id = m.lot
                        JOIN materials.lot_component n ON n.entry = m.entry AND n.lot = m.lot
                        JOIN materials.lot c ON c.id = n.component
                        LEFT JOIN catalog.item i ON i.id = m.item ORDER BY 1
                        """).query((row, number) -> row.getString(1)).list();
    }
}
