package dev.sunthread.production.balance;

import static dev.sunthread.materials.stock.Movement.Way.FILLED;
import static dev.sunthread.materials.stock.Movement.Way.MADE_HERE;
import static dev.sunthread.materials.stock.Movement.Way.RECEIVED;
import static dev.sunthread.materials.stock.Movement.Way.RETURNED_TO_THE_SUPPLIER;
import static dev.sunthread.materials.stock.Movement.Way.SAMPLED;
import static dev.sunthread.materials.stock.Movement.Way.USED;
import static dev.sunthread.materials.stock.Movement.Way.WASTED;
import static dev.sunthread.materials.stock.Movement.Way.WENT_INTO_OTHER_LOTS;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.materials.Containers;
import dev.sunthread.materials.Lots;
import dev.sunthread.materials.Store;
import dev.sunthread.materials.stock.Balance;
import dev.sunthread.materials.stock.Movement.Way;
import dev.sunthread.testing.SunthreadTest;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Hard case 30: where all of a lot or container went, from happenings alone. */
@SunthreadTest
class BalancesTests {

    @Autowired
    Door door;

    @Autowired
    Sealer sealer;

    @Autowired
    Lots lots;

    @Autowired
    Containers containers;

    @Autowired
    Balances balances;

    Store store;

    @BeforeEach
    void stocked() {
        store = Store.stocked(door);
        store.plant.birth("06:00", "RCV", "r1", "r2", "r3");
    }

    /** 100 = 2 x 3 used + 20 in M + 1 wasted + 2 sampled + 68 counted + 3 unexplained. */
    @Test
    void lotIsUsedMadeIntoOthersWastedSampledCountedAndTheRestUnexplained() {
        bond("08:00", Map.of("item", "ADH", "lot", "A", "quantity", "3", "unitOfMeasure", "g"), "r1", "r2");
        store.blend("08:10", "M", "A 20", "B 5");
        store.act("waste", "08:20", "A", "1");
        store.act("sample", "08:30", "A", "2");
        store.act("count", "09:00", "A", "68");
        Balance balance = ofLot("A");
        assertThat(lines(balance))
                .containsExactlyInAnyOrderEntriesOf(
                        Map.of(RECEIVED, "100", USED, "6", WENT_INTO_OTHER_LOTS, "20", WASTED, "1", SAMPLED, "2"));
        assertThat(balance.onHand()).isEqualByComparingTo("68");
        assertThat(balance.unexplained()).isEqualByComparingTo("3");
        assertThat(lines(ofLot("M"))).isEmpty();
    }

    @Test
    void useFromAPositionIsOfWhatWasLoadedThere() {
        store.plant.charge("08:00", "A", "V1");
        Map<String, Object> use = Map.of("item", "ADH", "position", "V1", "quantity", "3", "unitOfMeasure", "g");
        bond("08:10", use, "r1");
        store.plant.charge("09:00", "B", "V1");
        bond("09:00", use, "r2");
        bond("09:10", Map.of("item", "ADH", "position", "V1"), "r3");
        assertThat(lines(ofLot("A"))).containsEntry(USED, "3");
        assertThat(ofLot("B").lines())
                .filteredOn(line -> line.way() == USED)
                .allMatch(line -> line.happenings() == 2 && line.unmeasured() == 1);
    }

    @Test
    void partsPutIntoUnitsAreUsed() {
        store.plant.birth("06:00", "WALL", "w1");
        store.plant.receipt("06:00", "CELLS", "CELL");
        store.plant.say(
                "installation",
                "08:00",
                Map.of(
                        "child",
                        Map.of("lot", "CELLS", "quantity", "2", "unitOfMeasure", "pcs"),
                        "parent",
                        Map.of("item", "WALL", "serial", "w1"),
                        "position",
                        "1"));
        assertThat(ofLot("CELLS").onHand()).isEqualByComparingTo("98");
    }

    @Test
    void lotThatWasUsedUpLeavesUnexplainedWhatNoStepTook() {
        bond("08:00", Map.of("item", "ADH", "lot", "A", "quantity", "90", "unitOfMeasure", "g"), "r1");
        store.end("09:00", "A", "used-up");
        assertThat(ofLot("A").onHand()).isEqualByComparingTo("0");
        assertThat(ofLot("A").unexplained()).isEqualByComparingTo("10");
    }

    @Test
    void whatIsRelabelledOrSentBackIsAllThatWasLeft() {
        store.plant.say("relabel", "08:00", Map.of("lot", "A", "into", "A2"));
        store.end("08:00", "B", "returned");
        assertThat(lines(ofLot("A"))).containsEntry(WENT_INTO_OTHER_LOTS, "100");
        assertThat(lines(ofLot("B"))).containsEntry(RETURNED_TO_THE_SUPPLIER, "100");
        assertThat(ofLot("A2").lines())
                .filteredOn(line -> line.way() == MADE_HERE)
                .allMatch(line -> line.unmeasured() == 1);
    }

    @Test
    void whatIsUnloadedFromAMixingPositionLeavesItsLot() {
        store.plant.charge("08:00", "A", "V1");
        store.plant.say("discharge", "09:00", Map.of("station", "BOND", "position", "V1", "into", "REST"));
        assertThat(ofLot("A").lines())
                .filteredOn(line -> line.way() == WENT_INTO_OTHER_LOTS)
                .allMatch(line -> line.unmeasured() == 1)
                .hasSize(1);
        assertThat(ofLot("B").lines()).hasSize(1);
    }

    /** 30 = 3 used from the position + 4 in M + 20 counted + 3 unexplained; the lot keeps its own balance. */
    @Test
    void containerHasABalanceOfItsOwn() {
        store.fill("07:00", "A", "c1 30", "c2 30");
        store.plant.say("charge", "08:00", Map.of("lot", "A", "station", "BOND", "position", "V1", "container", "c1"));
        bond("08:10", Map.of("item", "ADH", "position", "V1", "quantity", "3", "unitOfMeasure", "g"), "r1");
        var part = Map.of("lot", "A", "container", "c1", "quantity", "4", "unitOfMeasure", "g");
        store.plant.say("blend", "08:20", Store.with(Store.blended("M", "A"), "components", List.of(part)));
        store.plant.say(
                "count", "08:30", Map.of("lot", "A", "container", "c1", "quantity", "20", "unitOfMeasure", "g"));
        Balance balance = balances.ofContainer(containers.find("c1").orElseThrow(), sealer.seal());
        assertThat(lines(balance)).isEqualTo(Map.of(FILLED, "30", USED, "3", WENT_INTO_OTHER_LOTS, "4"));
        assertThat(balance.onHand()).isEqualByComparingTo("20");
        assertThat(balance.unexplained()).isEqualByComparingTo("3");
        assertThat(ofLot("A").onHand()).isEqualByComparingTo("93");
        assertThat(ofLot("A").countedAt()).isNull();
    }

    @Test
    void voidedUseIsCountedAsKnownAtTheCutOff() {
        bond("08:00", Map.of("item", "ADH", "lot", "A", "quantity", "3", "unitOfMeasure", "g"), "r1");
        long before = sealer.seal();
        store.plant.undo("09:00", store.plant.lastId());
        assertThat(ofLot("A").onHand()).isEqualByComparingTo("100");
        assertThat(balances.ofLot(lots.find("A").orElseThrow(), before).onHand())
                .isEqualByComparingTo("97");
    }

    private void bond(String time, Map<String, Object> use, String... serials) {
        var units = List.of(serials).stream()
                .map(serial -> Map.of("item", "RCV", "serial", serial))
                .toList();
        store.plant.say(
                "step", time, Map.of("operation", "bond", "station", "BOND", "units", units, "uses", List.of(use)));
    }

    private Balance ofLot(String number) {
        return balances.ofLot(lots.find(number).orElseThrow(), sealer.seal());
    }

    /** What was measured on each way. */
    private static Map<Way, String> lines(Balance balance) {
        return balance.lines().stream()
                .filter(line -> line.quantity().signum() > 0)
                .collect(Collectors.toMap(
                        Balance.Line::way, line -> line.quantity().toPlainString()));
    }
}
