package dev.sunthread.simulator.told;

import dev.sunthread.simulator.world.Layout;
import dev.sunthread.simulator.world.Layout.Operation;
import dev.sunthread.simulator.world.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The released definitions of a simulated plant. */
final class Definitions {

    private final Names names;
    private final Map<String, Integer> clocks;
    private final Map<Place, Integer> carryOver;
    private final List<Told> told = new ArrayList<>();
    private final long at;

    private Definitions(Names names, Map<String, Integer> clocks, Map<Place, Integer> carryOver, long at) {
        this.names = names;
        this.clocks = clocks;
        this.carryOver = carryOver;
        this.at = at;
    }

    static List<Told> of(Names names, Map<String, Integer> clocks, Map<Place, Integer> carryOver, long at) {
        Definitions definitions = new Definitions(names, clocks, carryOver, at);
        definitions.items();
        definitions.tell("recipe", Map.of("recipe", names.of("CURE"), "name", "Cure the bond"));
        definitions.tell("recipe", Map.of("recipe", names.of("BAKE"), "name", "Bake the coat"));
        definitions.tell("specification", Map.of("specification", names.of("IV"), "name", "Curve of a receiver"));
        definitions.tell("specification", Map.of("specification", names.of("FLASH"), "name", "Curve of a module"));
        definitions.stations();
        definitions.equipment("OVEN-1", "OVEN");
        definitions.equipment("RIG-1", "RIG");
        definitions.structures();
        Layout.UNIT_ITEMS.forEach(definitions::route);
        return definitions.told;
    }

    private void items() {
        Layout.UNIT_ITEMS.forEach(item -> tell(
                "item",
                Map.of(
                        "item",
                        names.of(item),
                        "name",
                        item,
                        "tracking",
                        "serial",
                        "level",
                        names.of(item),
                        "unitOfMeasure",
                        "pcs")));
        Layout.LOT_ITEMS.forEach(item ->
                tell("item", Map.of("item", names.of(item), "name", item, "tracking", "lot", "unitOfMeasure", "g")));
    }

    private void stations() {
        new TreeMap<>(Layout.POSITIONS).forEach((station, positions) -> {
            Map<String, Object> body = new LinkedHashMap<>(Map.of(
                    "station",
                    names.of(station),
                    "name",
                    station,
                    "clockUncertainty",
                    String.valueOf(Objects.requireNonNull(clocks.get(station))),
                    "positions",
                    positions.stream().map(names::of).toList()));
            if (Layout.TANK.station().equals(station)) {
                body.put("mixingBack", List.of(names.of(Layout.TANK.position())));
            }
            List<Map<String, Object>> limits = limits(station);
            if (!limits.isEmpty()) {
                body.put("carryOver", limits);
            }
            tell("station", body);
        });
    }

    private List<Map<String, Object>> limits(String station) {
        return carryOver.entrySet().stream()
                .filter(limit -> limit.getKey().station().equals(station))
                .map(limit -> Map.<String, Object>of(
                        "position",
                        names.of(limit.getKey().position()),
                        "uses",
                        limit.getValue(),
                        "evidence",
                        "Weighed"))
                .toList();
    }

    private void equipment(String code, String station) {
        tell("equipment", Map.of("equipment", names.of(code), "name", code, "station", names.of(station)));
    }

    private void structures() {
        Stream.of("WALL", "MOD", "PANEL", "MIX").forEach(item -> {
            List<Map<String, Object>> positions = new ArrayList<>();
            new TreeMap<>(Layout.structure(item))
                    .forEach((position, child) ->
                            positions.add(Map.of("position", position, "items", List.of(names.of(child)))));
            tell("structure", Map.of("item", names.of(item), "positions", positions));
        });
    }

    private void route(String item) {
        List<Map<String, Object>> operations =
                Layout.route(item).stream().map(this::operation).toList();
        tell("route", Map.of("item", names.of(item), "operations", operations));
    }

    private Map<String, Object> operation(Operation operation) {
        Map<String, Object> body = new LinkedHashMap<>();
        body.put("operation", operation.code());
        body.put("name", operation.code());
        if (operation.consumes() != null) {
            body.put("consumes", List.of(names.of(operation.consumes())));
            String alternate = Layout.ALTERNATES.get(operation.consumes());
            if (alternate != null) {
                body.put(
                        "alternates",
                        List.of(Map.of("item", names.of(operation.consumes()), "alternate", names.of(alternate))));
            }
        }
        if (operation.cure() != null) {
            body.put("cures", List.of(names.of(operation.cure())));
        }
        if (operation.test() != null) {
            body.put("tests", List.of(names.of(operation.test())));
        }
        if (operation.alone()) {
            body.put("reach", "unit-alone");
        }
        return body;
    }

    private void tell(String kind, Map<String, Object> said) {
        Map<String, Object> body = new LinkedHashMap<>(said);
        body.put("revision", "A");
        told.add(new Told(names.of("def-" + (told.size() + 1)), kind, at, body));
    }
}
