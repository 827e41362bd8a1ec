package dev.sunthread.materials;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Interlock;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Workshop;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Material that is loaded or used is not on hold, expired, empty, or too long open or warm. */
@SunthreadTest
class MaterialInterlockTests {

    @Autowired
    Door door;

    private Plant plant;
    private Interlock interlock;

    /** Adhesive may be open for eight hours and warm for two days; lot OLD expires at noon. */
    @BeforeEach
    void stocked() {
        plant = Workshop.released(door).plant();
        interlock = new Interlock(plant);
        Map<String, Object> item = new TreeMap<>(Map.of("item", "ADH", "revision", "B", "name", "Adhesive"));
        item.putAll(Map.of("tracking", "lot", "unitOfMeasure", "g", "openLife", 28_800, "outLife", 172_800));
        plant.say("item", "1 01:00", item);
        plant.receipt("1 06:00", "A", "ADH");
        plant.say(
                "receipt",
                "1 06:00",
                Map.of(
                        "lot",
                        "OLD",
                        "item",
                        "ADH",
                        "quantity",
                        "100",
                        "unitOfMeasure",
                        "g",
                        "expiresAt",
                        "2026-03-10T12:00:00+01:00"));
        fill("A", "S1", "S2");
    }

    private void fill(String lot, String... labels) {
        plant.say(
                "container",
                "1 07:00",
                Map.of(
                        "lot",
                        lot,
                        "containers",
                        List.of(labels).stream()
                                .map(label -> Map.of("label", label))
                                .toList()));
    }

    @Test
    void anExpiredLotIsNeitherLoadedNorUsed() {
        interlock.none("step", "11:59", scanned("R1", "OLD"));
        interlock.of("lot-is-not-expired", "step", "12:00", scanned("R2", "OLD"));
        assertThat(interlock
                        .of("lot-is-not-expired", "charge", "12:10", charged("OLD", null))
                        .sentence())
                .isEqualTo("Lot OLD had expired");
    }

    @Test
    void anExpiredLotIsNotInstalledAsAPart() {
        interlock.of(
                "lot-is-not-expired",
                "installation",
                "12:00",
                Map.of("child", Map.of("lot", "OLD"), "parent", Workshop.unit("WALL W1"), "position", "1"));
    }

    @Test
    void whatIsRecordedAsLoadedIsAskedWhereNobodyScans() {
        plant.charge("11:00", "OLD", "V1");
        interlock.none("step", "11:30", taken("R1", "V1"));
        interlock.of("lot-is-not-expired", "step", "12:30", taken("R2", "V1"));
        plant.say("hold", "12:40", Map.of("lots", List.of("OLD"), "reason", "too thin"));
        interlock.of("lot-is-not-on-hold", "step", "11:40", taken("R3", "V1"));
        plant.charge("11:00", "A", "V2");
        plant.say("lot-ending", "13:00", Map.of("lot", "A", "why", "used-up"));
        interlock.of("lot-is-not-ended", "step", "13:10", taken("R4", "V2"));
    }

    @Test
    void aContainerOnHoldIsNeitherLoadedNorUsed() {
        plant.say("hold", "08:00", Map.of("containers", List.of("S1"), "reason", "dented"));
        assertThat(interlock
                        .of("container-is-not-on-hold", "charge", "08:10", charged("A", "S1"))
                        .sentence())
                .isEqualTo("Container S1 is on hold: dented");
        interlock.of("container-is-not-on-hold", "step", "08:20", taken("R1", "V1"));
        interlock.none("step", "08:20", scanned("R2", "A", "S2"));
        interlock.of("container-is-not-on-hold", "step", "08:20", scanned("R3", "A", "S1"));
    }

    @Test
    void anEmptyContainerIsNotUsed() {
        plant.say("lot-ending", "08:00", Map.of("lot", "A", "container", "S1", "why", "used-up"));
        interlock.of("container-is-not-empty", "step", "08:10", scanned("R1", "A", "S1"));
        interlock.of("container-is-not-empty", "charge", "08:20", charged("A", "S1"));
    }

    @Test
    void aContainerIsUsedWithinItsOpenLife() {
        String rule = "container-is-within-its-open-life";
        plant.say("container-opening", "08:00", Map.of("container", "S1"));
        interlock.none("step", "16:00", scanned("R1", "A", "S1"));
        assertThat(interlock.of(rule, "step", "16:01", scanned("R2", "A", "S1")).sentence())
                .isEqualTo("Container S1 was opened 8 h 1 min ago and may be used for 8 h 0 min");
        interlock.of(rule, "charge", "16:02", charged("A", "S1"));
        interlock.of(rule, "step", "16:03", taken("R3", "V1"));
    }

    @Test
    void aContainerIsOpenAtTheLatestFromWhenItIsLoaded() {
        plant.say("charge", "08:00", charged("A", "S2"));
        interlock.none("step", "15:59", taken("R1", "V1"));
        interlock.of("container-is-within-its-open-life", "step", "16:01", taken("R2", "V1"));
    }

    @Test
    void aContainerIsUsedWithinItsTimeAtRoomTemperature() {
        plant.say("container-move", "7 08:00", Map.of("container", "S1", "place", "Room", "storage", "room"));
        plant.say("container-move", "8 08:00", Map.of("container", "S1", "place", "Freezer", "storage", "frozen"));
        plant.say("container-move", "9 08:00", Map.of("container", "S1", "place", "Room", "storage", "room"));
        interlock.none("step", "10 08:00", scanned("R1", "A", "S1"));
        assertThat(interlock
                        .of("container-is-within-its-out-life", "step", "10 08:01", scanned("R2", "A", "S1"))
                        .sentence())
                .isEqualTo("Container S1 was at room temperature for 48 h 1 min in all and may be for 48 h 0 min");
    }

    private static Map<String, Object> charged(String lot, @Nullable String container) {
        Map<String, Object> body = new TreeMap<>(Map.of("lot", lot, "station", "BOND", "position", "V1"));
        if (container != null) {
            body.put("container", container);
        }
        return body;
    }

    private static Map<String, Object> scanned(String serial, String lot) {
        return used(serial, Map.of("item", "ADH", "lot", lot));
    }

    private static Map<String, Object> scanned(String serial, String lot, String container) {
        return used(serial, Map.of("item", "ADH", "lot", lot, "container", container));
    }

    private static Map<String, Object> taken(String serial, String position) {
        return used(serial, Map.of("item", "ADH", "position", position));
    }

    private static Map<String, Object> used(String serial, Map<String, Object> use) {
        Map<String, Object> body = new TreeMap<>(Workshop.stepped("bond", "RCV " + serial));
        body.put("uses", List.of(use));
        return body;
    }
}
