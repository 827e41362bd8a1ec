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

    /** A birth that no plant has said yet. */
    public static Envelope birthOf(String item, String serial) {
        var head = new dev.sunthread.ledger.EnvelopeHead(
                "birth-" + item + "-" + serial, "birth", 1, Plant.at("12:00"), "op-1", "test");
        return Envelope.of(head, (tools.jackson.databind.node.ObjectNode)
                tools.jackson.databind.json.JsonMapper.shared()
                        .valueToTree(Map.of("units", List.of(Map.of("item", item, "serial", serial)))));
    }
}
