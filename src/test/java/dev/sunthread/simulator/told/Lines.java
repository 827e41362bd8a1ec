package dev.sunthread.simulator.told;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Records that could not be read when they came, with what they name. */
final class Lines {

    private static final Map<String, String> NAMES = Map.of(
            "lot", "lot", "serial", "unit", "position", "position", "container", "container", "label", "container");
    private static final Set<String> NOT_OF_A_STATION = Set.of("installation", "removal");

    private Lines() {}

    static Map<String, Object> unreadable(Told told, boolean dated) {
        List<Map<String, Object>> names = new ArrayList<>();
        collect(told.body(), names);
        if (NOT_OF_A_STATION.contains(told.kind())) {
            names.removeIf(name -> "position".equals(name.get("kind")));
        }
        return Map.of(
                "file",
                "scanner.ndjson",
                "lineNumber",
                1,
                "length",
                10,
                "sha256",
                "0".repeat(64),
                "text",
                "{\"id\":\"" + told.id(),
                "problems",
                List.of(Map.of("field", "line", "reason", "is not whole", "remedy", "Send it again")),
                "names",
                names.stream().distinct().toList());
    }

    private static void collect(Object value, List<Map<String, Object>> names) {
        if (value instanceof Map<?, ?> map) {
            new TreeMap<Object, Object>(map).forEach((key, inner) -> {
                String kind = NAMES.get(String.valueOf(key));
                if (kind != null && inner instanceof String name) {
                    names.add(Map.of("kind", kind, "name", name));
                }
                collect(inner, names);
            });
        } else if (value instanceof List<?> list) {
            list.forEach(inner -> collect(inner, names));
        }
    }
}
