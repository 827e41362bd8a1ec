package dev.sunthread.genealogy;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;

/**
 * What is told of a simulated plant beside its own records, at any time: next revisions of all that is released, things
 * that nobody named before, holds, lines that could not be read, and what takes records back or settles them.
 */
final class Afterthoughts {

    private static final Set<String> REVISED =
            Set.of("item", "station", "route", "structure", "equipment", "recipe", "specification");

    private static final Set<String> LASTING = Set.of("void", "correction", "kept-line");

    private final String plant;
    private final List<Said> said;
    private final Random random;
    private final List<Said> later = new ArrayList<>();

    private Afterthoughts(String plant, List<Said> said, Random random) {
        this.plant = plant;
        this.said = said;
        this.random = random;
    }

    static List<Said> of(String plant, List<Said> said, Random random) {
        Afterthoughts all = new Afterthoughts(plant, said, random);
        said.stream().filter(one -> REVISED.contains(one.kind())).forEach(all::revise);
        all.nameNewThings();
        all.nameInKeptLines();
        all.holdAndRelease();
        all.judge();
        all.takeBack();
        return all.later;
    }

    private void revise(Said released) {
        Map<String, Object> body = new HashMap<>(released.body());
        body.put("revision", "B");
        switch (released.kind()) {
            case "station" -> {
                body.put("clockUncertainty", String.valueOf(60 + random.nextInt(600)));
                body.put("positions", List.of(named("LATE")));
                body.remove("carryOver");
                body.remove("mixingBack");
            }
            case "structure" -> body.put("positions", List.of(position(released)));
            case "route" -> body.put("operations", operations(released));
            default -> body.put("name", "Renamed");
        }
        say(released.kind(), body);
    }

    private Map<String, Object> position(Said structure) {
        boolean mixed = structure.text("item").equals(named("MIX"));
        return Map.of("position", "late", "items", List.of(named(mixed ? "BASE" : "LENS")));
    }

    private List<Map<String, Object>> operations(Said route) {
        List<Map<String, Object>> operations = new ArrayList<>();
        route.maps("operations")
                .forEach(operation -> operations.add(Map.of(
                        "operation", Objects.requireNonNull(operation.get("operation")),
                        "name", "Renamed",
                        "consumes", List.of(named(random.nextBoolean() ? "PRI" : "ADH")),
                        "cures", List.of(named("CURE")))));
        return operations;
    }

    private void nameNewThings() {
        for (String item : List.of("RCV", "RCV", "WALL", "MOD", "PANEL")) {
            Map<String, Object> unit = Map.of("item", named(item), "serial", named("late" + later.size()));
            say("birth", Map.of("units", List.of(unit)));
            say("step", Map.of("operation", "late", "station", named("BOND"), "units", List.of(unit)));
            say(
                    "carrier-load",
                    Map.of("carrier", named("LATE" + later.size()), "loads", List.of(Map.of("unit", unit))));
        }
        for (String item : List.of("ADH", "PRI", "LENS")) {
            String lot = named("LATE-" + item);
            say("receipt", Map.of("lot", lot, "item", named(item), "quantity", "100", "unitOfMeasure", "g"));
            say("container", Map.of("lot", lot, "containers", List.of(Map.of("label", named("C-LATE-" + item)))));
            say("container", Map.of("lot", any("lot"), "containers", List.of(Map.of("label", named("C2-" + item)))));
        }
    }

    private void nameInKeptLines() {
        for (int i = 0; i < 4; i++) {
            List<Map<String, Object>> names = List.of(
                    Map.of("kind", "lot", "name", i % 2 == 0 ? any("lot") : named("LATE-ADH")),
                    Map.of("kind", "unit", "name", i < 2 ? any("serial") : named("late0")),
                    Map.of("kind", "position", "name", named(i == 0 ? "LATE" : "V1")),
                    Map.of("kind", "container", "name", named("C2-ADH")));
            Map<String, Object> line = new HashMap<>(Map.of(
                    "file",
                    "scanner.ndjson",
                    "lineNumber",
                    i + 1,
                    "length",
                    10,
                    "sha256",
                    "0".repeat(64),
                    "text",
                    "{"));
            line.put("problems", List.of(Map.of("field", "line", "reason", "is not whole", "remedy", "Send it again")));
            line.put("names", i == 1 ? names.subList(0, 2) : names);
            String kept = say("kept-line", line);
            say("line-settlement", Map.of("line", kept, "why", "It tells nothing"));
        }
    }

    private void holdAndRelease() {
        for (int i = 0; i < 3; i++) {
            String hold = say(
                    "hold",
                    Map.of(
                            "lots",
                            List.of(any("lot"), named("LATE-ADH")),
                            "units",
                            List.of(unit()),
                            "reason",
                            "Notice"));
            say("hold-release", Map.of("entry", hold, "hold", 1, "why", "Looked over"));
        }
    }

    private void judge() {
        for (int i = 0; i < 3; i++) {
            say("deviation", Map.of("unit", unit(), "recipe", named("CURE"), "why", "Accepted"));
            Map<String, Object> check =
                    Map.of("equipment", named(i == 0 ? "RIG-1" : "OVEN-1"), "evidence", "Looked at");
            say("calibration", with(check, "verdict", i == 1 ? "good" : "bad"));
            String behind = say(
                    "station-behind",
                    Map.of(
                            "station",
                            named("BOND"),
                            "since",
                            Draw.written(said.get(0).at()),
                            "why",
                            "Written on paper"));
            say("station-caught-up", Map.of("entry", behind, "why", "Entered"));
        }
    }

    private void takeBack() {
        List<Said> happenings = said.stream()
                .filter(one -> !one.id().contains("-def-") && !LASTING.contains(one.kind()))
                .toList();
        for (int i = 0; i < 12; i++) {
            Said target = happenings.get(random.nextInt(happenings.size()));
            Map<String, Object> body = Map.of("entry", target.id(), "why", "Scanned by mistake");
            if (i % 2 == 0) {
                say("void", body);
            } else {
                say("correction", with(body, "body", target.body()));
            }
        }
    }

    private Map<String, Object> unit() {
        List<Said> births =
                said.stream().filter(one -> one.kind().equals("birth")).toList();
        return births.get(random.nextInt(births.size())).maps("units").get(0);
    }

    private String any(String field) {
        List<String> names = List.copyOf(NamedThings.named(said, field));
        return names.get(random.nextInt(names.size()));
    }

    private static Map<String, Object> with(Map<String, Object> body, String field, Object value) {
        Map<String, Object> more = new HashMap<>(body);
        more.put(field, value);
        return more;
    }

    private OffsetDateTime moment() {
        return said.get(random.nextInt(said.size())).at();
    }

    private String named(String name) {
        return plant + "-" + name;
    }

    private String say(String kind, Map<String, Object> body) {
        String id = named("later-" + (later.size() + 1));
        later.add(new Said(id, kind, moment(), body));
        return id;
    }
}
