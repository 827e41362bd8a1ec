package dev.sunthread.genealogy;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Bodies of random facts, some of which contradict others. */
final class RandomFacts {

    private final Draw draw;

    RandomFacts(Draw draw) {
        this.draw = draw;
    }

    Map<String, Object> body(String kind, OffsetDateTime at) {
        return switch (kind) {
            case "receipt" ->
                receipt(draw.chance(6) ? Draw.PARTS : draw.any(Draw.LOTS), draw.chance(4) ? "PRI" : "ADH");
            case "birth" -> birth(draw.any(Draw.UNITS));
            case "charge" -> at(Map.of("lot", lot()));
            case "discharge" -> at(draw.chance(2) ? Map.of() : Map.of("lot", lot()));
            case "clean-point" -> at(Map.of("evidence", "purged"));
            case "step" -> step(at);
            case "installation" -> installation();
            case "removal" -> removal();
            case "shipment" -> Map.of("shipment", "S-1", "consignee", "Site North", "units", draw.units(2));
            case "return" -> Map.of("consignee", "Site North", "units", draw.units(1));
            default -> throw new IllegalArgumentException(kind);
        };
    }

    Map<String, Object> station(String code, int uncertainty, String revision) {
        return Map.of(
                "station",
                draw.named(code),
                "revision",
                revision,
                "name",
                code,
                "clockUncertainty",
                String.valueOf(uncertainty),
                "positions",
                Draw.POSITIONS);
    }

    Map<String, Object> receipt(String lot, String item) {
        boolean isPart = lot.equals(Draw.PARTS);
        return Map.of(
                "lot",
                draw.named(lot),
                "item",
                isPart ? "CELL" : item,
                "quantity",
                "100",
                "unitOfMeasure",
                isPart ? "pcs" : "g",
                "supplierLots",
                supplierLots());
    }

    // a receipt without one may be of any
    private List<String> supplierLots() {
        String some = draw.any(List.of("X", "Y", "XY"));
        return some.chars()
                .mapToObj(letter -> draw.named(String.valueOf((char) letter)))
                .toList();
    }

    Map<String, Object> birth(String unit) {
        Map<String, Object> body = new HashMap<>(Map.of("units", List.of(draw.unit(unit))));
        perhapsAtStation(body);
        return body;
    }

    private String lot() {
        return draw.named(draw.any(Draw.LOTS));
    }

    private Map<String, Object> at(Map<String, Object> told) {
        Map<String, Object> body = new HashMap<>(told);
        body.put("station", draw.named(draw.any(Draw.STATIONS)));
        body.put("position", draw.any(Draw.POSITIONS));
        return body;
    }

    private Map<String, Object> step(OffsetDateTime at) {
        List<Map<String, Object>> uses = new ArrayList<>(List.of(use()));
        if (draw.chance(4)) {
            uses.add(use());
        }
        return Map.of(
                "operation", "bond",
                "station", draw.named(draw.any(Draw.STATIONS)),
                "startedAt", draw.notLongBefore(at),
                "units", draw.units(draw.chance(4) ? 2 : 1),
                "uses", uses);
    }

    private Map<String, Object> use() {
        Map<String, Object> use = new HashMap<>(Map.of("item", draw.chance(4) ? "PRI" : "ADH"));
        if (!draw.chance(3)) {
            use.put("lot", lot());
        }
        if (!draw.chance(3)) {
            use.put("position", draw.any(Draw.POSITIONS));
        }
        return use;
    }

    private Map<String, Object> installation() {
        Map<String, Object> body = inAnother();
        body.put("position", draw.any(List.of("1", "2")));
        return body;
    }

    private Map<String, Object> removal() {
        Map<String, Object> body = inAnother();
        if (draw.chance(2) || Said.map(body, "child").containsKey("lot")) {
            body.put("position", draw.any(List.of("1", "2")));
        }
        return body;
    }

    // seldom a unit goes into one of its own or a lower level, so that there are loops
    private Map<String, Object> inAnother() {
        int count = Draw.UNITS.size();
        int child = draw.anyOf(count - 1);
        int parent = draw.chance(12) ? (child + 1) % count : Math.max(child + 1, 3 + draw.anyOf(3));
        Map<String, Object> body = new HashMap<>();
        body.put(
                "child",
                draw.chance(6)
                        ? Map.of("lot", draw.named(Draw.PARTS))
                        : Map.of("unit", draw.unit(Draw.UNITS.get(child))));
        body.put("parent", draw.unit(Draw.UNITS.get(parent)));
        perhapsAtStation(body);
        return body;
    }

    private void perhapsAtStation(Map<String, Object> body) {
        if (!draw.chance(3)) {
            body.put("station", draw.named(draw.any(Draw.STATIONS)));
        }
    }
}
