package dev.sunthread.benchmark;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import java.util.List;
import java.util.Map;

/** Stations {@code B1} and on, at each of which receivers {@code R#######} are bonded with cells of lot {@code C-1}. */
final class StationFloor {

    private StationFloor() {}

    static void released(Door door, int stations) {
        Plant plant = new Plant(door, "floor");
        plant.item("CELL", "lot", null, "pcs");
        plant.say(
                "item",
                "1 00:00",
                Map.of(
                        "item",
                        "REC",
                        "revision",
                        "A",
                        "name",
                        "Receiver",
                        "tracking",
                        "serial",
                        "level",
                        "receiver",
                        "unitOfMeasure",
                        "pcs",
                        "serialPattern",
                        "R#######"));
        for (int i = 1; i <= stations; i++) {
            plant.station("B" + i, "5");
        }
        Map<String, Object> bond = Map.of("operation", "bond", "name", "Bond", "consumes", List.of("CELL"));
        plant.say("route", "1 00:00", Map.of("item", "REC", "revision", "A", "operations", List.of(bond)));
        plant.receipt("07:00", "C-1", "CELL");
    }
}
