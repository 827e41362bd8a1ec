package dev.sunthread.testing;

import dev.sunthread.kernel.UnitId;
import dev.sunthread.ledger.Acceptance;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeHead;
import dev.sunthread.ledger.Manner;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * A plant for tests that says through the door what happens in it: adhesive {@code ADH} by lot, units of
 * {@code RCV}, {@code WALL}, {@code MOD} and {@code PANEL}, one bonding station with two valves and a clock that is
 * right within ten seconds. Times are written {@code HH:mm} of one day, or {@code d HH:mm} with a day of March.
 */
public final class Plant {

    private static final JsonMapper JSON = JsonMapper.shared();

    private final Door door;
    private final String prefix;
    private int said;
    private String lastId = "none";

    public Plant(Door door) {
        this(door, "said");
    }

    /** A plant whose ids begin otherwise, beside others that are told in the same database. */
    public Plant(Door door, String prefix) {
        this.door = door;
        this.prefix = prefix;
    }

    /** A plant with its definitions released. */
    public static Plant released(Door door) {
        Plant plant = new Plant(door);
        plant.item("ADH", "lot", null, "g");
        plant.item("CELL", "lot", null, "pcs");
        plant.item("RCV", "serial", "receiver", "pcs");
        plant.item("WALL", "serial", "wall", "pcs");
        plant.item("MOD", "serial", "module", "pcs");
        plant.item("PANEL", "serial", "panel", "pcs");
        plant.station("BOND", "10", "V1", "V2");
        return plant;
    }

    public Acceptance item(String number, String tracking, @Nullable String level, String unit) {
        Map<String, Object> body = new TreeMap<>(
                Map.of("item", number, "revision", "A", "name", number, "tracking", tracking, "unitOfMeasure", unit));
        if (level != null) {
            body.put("level", level);
        }
        return say("item", "1 00:00", body);
    }

    public Acceptance station(String code, String uncertainty, String... positions) {
        return say(
                "station",
                "1 00:00",
                Map.of(
                        "station",
                        code,
                        "revision",
                        "A",
                        "name",
                        code,
                        "clockUncertainty",
                        uncertainty,
                        "positions",
                        List.of(positions)));
    }

    public Acceptance receipt(String time, String lot, String item, String... supplierLots) {
        return say(
                "receipt",
                time,
                Map.of(
                        "lot",
                        lot,
                        "item",
                        item,
                        "quantity",
                        "100",
                        "unitOfMeasure",
                        item.equals("CELL") ? "pcs" : "g",
                        "supplier",
                        "Far Supplier",
                        "supplierLots",
                        List.of(supplierLots)));
    }

    public Acceptance charge(String time, String lot, String position) {
        return say("charge", time, Map.of("lot", lot, "station", "BOND", "position", position));
    }

    public Acceptance discharge(String time, String position) {
        return say("discharge", time, Map.of("station", "BOND", "position", position));
    }

    public Acceptance cleanPoint(String time, String position) {
        return say("clean-point", time, Map.of("station", "BOND", "position", position, "evidence", "purged"));
    }

    public Acceptance birth(String time, String item, String... serials) {
        return say(
                "birth",
                time,
                Map.of("units", Arrays.stream(serials).map(s -> unit(item, s)).toList()));
    }

    /** A bond that scanned the lot, at no stated position. */
    public Acceptance bondWithLot(String time, String serial, String lot) {
        return bond(time, serial, Map.of("item", "ADH", "lot", lot));
    }

    /** A bond from a position, its lot not scanned. */
    public Acceptance bondAt(String time, String serial, String position) {
        return bond(time, serial, Map.of("item", "ADH", "position", position));
    }

    /** A bond that scanned the lot and named the position. */
    public Acceptance bondAt(String time, String serial, String position, String lot) {
        return bond(time, serial, Map.of("item", "ADH", "position", position, "lot", lot));
    }

    private Acceptance bond(String time, String serial, Map<String, Object> use) {
        return step(time, "bond", "RCV", serial, List.of(use));
    }

    public Acceptance step(String time, String operation, String item, String serial, List<Map<String, Object>> uses) {
        return say(
                "step",
                time,
                Map.of("operation", operation, "station", "BOND", "units", List.of(unit(item, serial)), "uses", uses));
    }

    /** Puts a unit, written {@code ITEM serial}, into a position of another. */
    public Acceptance install(String time, String child, String parent, String position) {
        return say(
                "installation",
                time,
                Map.of("child", Map.of("unit", unit(child)), "parent", unit(parent), "position", position));
    }

    public Acceptance remove(String time, String child, String parent) {
        return say("removal", time, Map.of("child", Map.of("unit", unit(child)), "parent", unit(parent)));
    }

    public Acceptance ship(String time, String shipment, String consignee, String... units) {
        return say(
                "shipment",
                time,
                Map.of(
                        "shipment",
                        shipment,
                        "consignee",
                        consignee,
                        "units",
                        Arrays.stream(units).map(Plant::unit).toList()));
    }

    public Acceptance takeBack(String time, String consignee, String... units) {
        return say(
                "return",
                time,
                Map.of(
                        "consignee",
                        consignee,
                        "units",
                        Arrays.stream(units).map(Plant::unit).toList()));
    }

    public Acceptance holdUnit(String time, String unit, String reason) {
        return say("hold", time, Map.of("units", List.of(unit(unit)), "reason", reason));
    }

    public Acceptance undo(String time, String entry) {
        return say("void", time, Map.of("entry", entry, "why", "scanned by mistake"));
    }

    public Acceptance correct(String time, String entry, Map<String, Object> body) {
        return say("correction", time, Map.of("entry", entry, "why", "scanned by mistake", "body", body));
    }

    /** Says anything at all, as told afterwards. */
    public Acceptance say(String kind, String time, Map<String, Object> body) {
        return say(kind, time, body, Manner.TOLD);
    }

    public Acceptance say(String kind, String time, Map<String, Object> body, Manner manner) {
        return door.accept(envelope(kind, time, body), manner);
    }

    public Envelope envelope(String kind, String time, Map<String, Object> body) {
        lastId = prefix + "-" + ++said;
        var head = new EnvelopeHead(lastId, kind, 1, at(time), "op-1", "test");
        return Envelope.of(head, (ObjectNode) JSON.valueToTree(body));
    }

    /** The id of what was said last. */
    public String lastId() {
        return lastId;
    }

    /** The moment written as in this plant's times. */
    public static OffsetDateTime at(String time) {
        String[] parts = time.split(" ");
        String day = parts.length == 2 ? parts[0] : "10";
        return OffsetDateTime.parse(
                "2026-03-%02dT%s:00+01:00".formatted(Integer.parseInt(day), parts[parts.length - 1]));
    }

    public static UnitId id(String unit) {
        String[] parts = unit.split(" ", 2);
        return UnitId.of(null, parts[0], parts[1]);
    }

    /** A unit, written {@code ITEM serial}, as bodies name it. */
    public static Map<String, Object> unit(String unit) {
        return unit(id(unit).item(), id(unit).serial());
    }

    private static Map<String, Object> unit(String item, String serial) {
        return Map.of("item", item, "serial", serial);
    }
}
