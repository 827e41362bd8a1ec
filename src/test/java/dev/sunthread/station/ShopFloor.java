package dev.sunthread.station;

import dev.sunthread.ledger.Acceptance;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A small line to scan at: receivers {@code R####} are bonded at BOND with a cell and adhesive and baked in OVEN, walls
 * {@code W####} get two of them at FLOOR and are coated at COAT, and are packed at PACK. Lots of everything are received.
 */
final class ShopFloor {

    private final Plant plant;

    private ShopFloor(Plant plant) {
        this.plant = plant;
    }

    static ShopFloor released(Door door) {
        ShopFloor floor = new ShopFloor(new Plant(door, "shop"));
        List.of("CELL", "TIM", "FST", "CC")
                .forEach(item -> floor.plant.item(item, "lot", null, item.equals("CELL") ? "pcs" : "g"));
        floor.serialised("REC", "receiver", "R####");
        floor.serialised("WAL", "wall", "W####");
        floor.plant.station("GLUE", "5", "V1", "V2");
        floor.plant.station("FLOOR", "5");
        floor.plant.station("COATER", "5", "POT");
        floor.plant.station("HEAT", "5");
        floor.plant.station("PACKER", "5");
        floor.define("recipe", "BAKE");
        floor.plant.say(
                "equipment",
                "1 00:00",
                Map.of("equipment", "OVEN-7", "revision", "A", "name", "Oven", "station", "HEAT"));
        floor.structure("WAL", "REC", "P1", "P2");
        floor.route(
                "REC",
                "A",
                operation(
                        "bond",
                        "GLUE",
                        List.of("CELL", "TIM"),
                        "cures",
                        List.of("BAKE"),
                        "cautions",
                        List.of("chemical")));
        floor.route(
                "WAL",
                "A",
                operation("fasten", "FLOOR", List.of("REC", "FST")),
                operation("coat", "COATER", List.of("CC")));
        Map.of("C-1", "CELL", "A-1", "TIM", "A-2", "TIM", "N-1", "FST", "K-1", "CC")
                .forEach((lot, item) -> floor.plant.receipt("07:00", lot, item));
        return floor;
    }

    Plant plant() {
        return plant;
    }

    /** Releases a revision of a station by which one of its positions takes only these items. */
    ShopFloor takes(String station, String position, String... items) {
        Map<String, Object> body =
                new TreeMap<>(Map.of("station", station, "revision", "B", "name", station, "clockUncertainty", "5"));
        body.put("takes", List.of(Map.of("position", position, "items", List.of(items))));
        plant.say("station", "2 00:00", body);
        return this;
    }

    void serialised(String item, String level, String pattern) {
        plant.say(
                "item",
                "1 00:00",
                Map.of(
                        "item",
                        item,
                        "revision",
                        "A",
                        "name",
                        item,
                        "tracking",
                        "serial",
                        "level",
                        level,
                        "unitOfMeasure",
                        "pcs",
                        "serialPattern",
                        pattern));
    }

    Acceptance define(String kind, String code) {
        return plant.say(kind, "1 00:00", Map.of(kind, code, "revision", "A", "name", code));
    }

    void structure(String item, String child, String... positions) {
        List<Map<String, Object>> places = Arrays.stream(positions)
                .map(position -> Map.<String, Object>of("position", position, "items", List.of(child)))
                .toList();
        plant.say("structure", "1 00:00", Map.of("item", item, "revision", "A", "positions", places));
    }

    /** Releases a revision of a route: A is in force first, B after it. */
    @SafeVarargs
    final void route(String item, String revision, Map<String, Object>... operations) {
        plant.say(
                "route",
                revision.equals("A") ? "1 00:00" : "2 00:00",
                Map.of("item", item, "revision", revision, "operations", Arrays.asList(operations)));
    }

    static Map<String, Object> operation(String code, String station, List<String> consumes, Object... more) {
        Map<String, Object> operation = new TreeMap<>(
                Map.of("operation", code, "name", code, "consumes", consumes, "stations", List.of(station)));
        for (int i = 0; i < more.length; i += 2) {
            operation.put((String) more[i], more[i + 1]);
        }
        return operation;
    }

    Acceptance hold(String time, String lot) {
        return plant.say("hold", time, Map.of("lots", List.of(lot), "reason", "Supplier's notice"));
    }
}
