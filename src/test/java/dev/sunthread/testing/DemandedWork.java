package dev.sunthread.testing;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Releases what the routes and structures of a filled plant demand of its units. */
final class DemandedWork {

    private DemandedWork() {}

    static void release(Plant plant) {
        plant.item("GEL", "lot", null, "g");
        plant.item("SIL", "lot", null, "g");
        define(plant, "recipe", "BAKE");
        define(plant, "specification", "PULL");
        define(plant, "equipment", "OVEN");
        define(plant, "equipment", "RIG");
        Map<String, Object> coat = operation("coat");
        coat.put("cures", List.of("BAKE"));
        coat.put("tests", List.of("PULL"));
        route(plant, "RCV", operation("bond", "ADH", "CELL"), coat, operation("optic", "GEL"));
        route(plant, "WALL", operation("seal", "SIL"));
        route(plant, "MOD", operation("close"));
        route(plant, "PANEL", operation("frame"));
        structure(plant, "WALL", 10, "RCV");
        structure(plant, "MOD", 10, "WALL");
        structure(plant, "PANEL", 2, "MOD");
    }

    private static void define(Plant plant, String kind, String code) {
        plant.say(kind, "1 00:00", Map.of(kind, code, "revision", "A", "name", code));
    }

    private static Map<String, Object> operation(String code, String... items) {
        return new TreeMap<>(Map.of("operation", code, "name", code, "consumes", List.of(items)));
    }

    @SafeVarargs
    private static void route(Plant plant, String item, Map<String, Object>... operations) {
        plant.say("route", "1 00:10", Map.of("item", item, "revision", "A", "operations", List.of(operations)));
    }

    private static void structure(Plant plant, String item, int positions, String child) {
        List<Map<String, Object>> places = IntStream.rangeClosed(1, positions)
                .mapToObj(i -> Map.<String, Object>of("position", String.valueOf(i), "items", List.of(child)))
                .toList();
        plant.say("structure", "1 00:10", Map.of("item", item, "revision", "A", "positions", places));
    }
}
