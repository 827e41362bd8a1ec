package dev.sunthread.web;

import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.testing.Plant;
import java.util.List;
import java.util.Map;

/** A plant small enough to read: two adhesive lots, three receivers, a wall with a slash in its serial, a shipment. */
public final class SmallPlant {

    private SmallPlant() {}

    /** Everything said through the door. */
    public static Plant built(Door door) {
        Plant plant = Plant.released(door);
        plant.receipt("07:00", "A-17", "ADH", "FAR/9 1");
        plant.receipt("07:00", "A-18", "ADH", "=2+3");
        plant.charge("08:00", "A-17", "V1");
        plant.birth("08:10", "RCV", "R0001", "R0002", "R0003");
        plant.bondAt("08:20", "R0001", "V1", "A-17");
        plant.bondAt("08:21", "R0002", "V1");
        plant.bondWithLot("08:22", "R0003", "A-18");
        plant.undo("08:30", plant.lastId());
        plant.birth("09:00", "WALL", "W/1");
        plant.install("09:10", "RCV R0001", "WALL W/1", "1");
        plant.install("09:11", "RCV R0002", "WALL W/1", "2");
        plant.remove("09:30", "RCV R0002", "WALL W/1");
        plant.ship("10:00", "S-1", "Sunny Field", "WALL W/1");
        plant.holdUnit("11:00", "WALL W/1", "scratched");
        return plant;
    }

    /** The same with a receiver cured on a tray in a rack, tested, and scrapped after its cell was recovered. */
    public static Plant withRuns(Plant plant) {
        for (String kind : List.of("recipe", "specification", "equipment")) {
            plant.say(
                    kind,
                    "1 00:00",
                    Map.of(kind, kind.equals("equipment") ? "OVEN" : "SOFT 1", "revision", "A", "name", "As told"));
        }
        Map<String, Object> receiver = Map.of("item", "RCV", "serial", "R0003");
        plant.say("calibration", "12:00", Map.of("equipment", "OVEN", "verdict", "good", "evidence", "as written"));
        plant.say(
                "carrier-load",
                "12:10",
                Map.of("carrier", "TRAY 1", "loads", List.of(Map.of("unit", receiver, "position", "A1"))));
        plant.say("carrier-load", "12:11", Map.of("carrier", "RACK", "loads", List.of(Map.of("carrier", "TRAY 1"))));
        plant.say(
                "cure-run",
                "13:00",
                Map.of(
                        "run",
                        "C/1",
                        "recipe",
                        "SOFT 1",
                        "equipment",
                        "OVEN",
                        "startedAt",
                        "2026-03-10T12:30:00+01:00",
                        "carriers",
                        List.of(Map.of("carrier", "RACK")),
                        "units",
                        List.of(Map.of("item", "RCV", "serial", "R0002"))));
        plant.say("carrier-unload", "13:10", Map.of("carrier", "TRAY 1"));
        plant.say(
                "test-run",
                "13:20",
                Map.of(
                        "run",
                        "T-1",
                        "unit",
                        receiver,
                        "specification",
                        "SOFT 1",
                        "equipment",
                        "OVEN",
                        "verdict",
                        "fail"));
        plant.say(
                "deviation",
                "13:30",
                Map.of("unit", receiver, "operation", "bond", "item", "CELL", "why", "none left"));
        plant.say(
                "recovery",
                "13:40",
                Map.of("unit", receiver, "lot", "L-9", "item", "CELL", "quantity", "1", "unitOfMeasure", "pcs"));
        plant.say("scrap", "13:50", Map.of("units", List.of(receiver), "why", "cracked"));
        return plant;
    }

    /** A birth that no plant has said yet. */
    public static Envelope birthOf(String item, String serial) {
        var head = new dev.sunthread.ledger.EnvelopeHead(
                "birth-" + item + "-" + serial, "birth", 1, Plant.at("12:00"), "op-1", "test");
        return Envelope.of(head, (tools.jackson.databind.node.ObjectNode)
                tools.jackson.databind.json.JsonMapper.shared()
                        .valueToTree(Map.of("units", List.of(Map.of("item", item, "serial", serial)))));
    }
}
