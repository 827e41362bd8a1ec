package dev.sunthread.simulator.told;

import dev.sunthread.simulator.Chance;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import tools.jackson.databind.json.JsonMapper;

/** Records that could not be read when they came, with what could be read of them. */
final class Lines {

    /** How much of a line can be read. */
    enum Form {
        /** All but one letter of what is no name. */
        WHOLE,
        /** What comes before the place where it broke off. */
        TORN,
        /** Names, and nothing else. */
        NAMES
    }

    private static final JsonMapper JSON = JsonMapper.shared();

    private static final Map<String, String> NAMES = Map.of(
            "lot", "lot",
            "lots", "lot",
            "into", "lot",
            "serial", "unit",
            "position", "position",
            "container", "container",
            "label", "container",
            "carrier", "carrier",
            "run", "run");

    private Lines() {}

    /** How much of a record can be read if it is unreadable. */
    static Form form(Draft draft) {
        return new Chance(draft.id.hashCode()).any(List.of(Form.WHOLE, Form.WHOLE, Form.TORN, Form.NAMES));
    }

    /** The correction that tells a record as it was, unreadable itself. */
    static Told correction(Told truth, long at) {
        return kept(new Told(
                truth.id() + "-mended",
                "correction",
                at,
                Map.of("entry", truth.id(), "why", "Another lot was there", "body", truth.body())));
    }

    /** The void that takes a record back, unreadable itself. */
    static Told taking(String id, long at) {
        return kept(new Told(id + "-void", "void", at, Map.of("entry", id, "why", "It never was")));
    }

    private static Told kept(Told told) {
        return new Told(told.id(), "kept-line", told.at(), unreadable(told, Form.WHOLE));
    }

    static Map<String, Object> unreadable(Told told, Form form) {
        String whole = text(told);
        int most = new Chance(told.id().hashCode() + 1L).between(whole.length() / 3, whole.length() - 1);
        String text =
                switch (form) {
                    case WHOLE -> whole;
                    case TORN -> whole.substring(0, most);
                    case NAMES -> "{\"id\":\"" + told.id();
                };
        List<Map<String, Object>> names = new ArrayList<>();
        collect("", told.body(), names);
        names.removeIf(name -> form == Form.TORN && !text.contains("\"" + name.get("name") + "\""));
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
                text,
                "problems",
                List.of(Map.of("field", "line", "reason", "is not whole", "remedy", "Send it again")),
                "names",
                names.stream().distinct().toList());
    }

    /** Half of them have the body before the kind, in the order of names; the others the kind first, then in any order. */
    private static String text(Told told) {
        Chance chance = new Chance(told.id().hashCode() + 3L);
        boolean bodyFirst = chance.of(0.5);
        Map<String, Object> line = new LinkedHashMap<>();
        line.put("actor", "op-1");
        if (bodyFirst) {
            line.put("body", new TreeMap<>(told.body()));
        }
        line.put("id", told.id());
        line.put("kind", told.kind());
        line.put("occurredAt", Told.written(told.at()));
        line.put("version", "l");
        if (!bodyFirst) {
            line.put("body", inAnyOrder(told.body(), chance));
        }
        return JSON.writeValueAsString(line);
    }

    private static Object inAnyOrder(Object value, Chance chance) {
        if (value instanceof Map<?, ?> map) {
            Map<Object, Object> mixed = new LinkedHashMap<>();
            TreeMap<Object, Object> sorted = new TreeMap<>(map);
            chance.some(List.copyOf(sorted.keySet()), sorted.size())
                    .forEach(key -> mixed.put(key, inAnyOrder(Objects.requireNonNull(sorted.get(key)), chance)));
            return mixed;
        }
        return value instanceof List<?> list
                ? list.stream().map(inner -> inAnyOrder(inner, chance)).toList()
                : value;
    }

    private static void collect(String field, Object value, List<Map<String, Object>> names) {
        if (value instanceof Map<?, ?> map) {
            new TreeMap<Object, Object>(map).forEach((key, inner) -> collect(String.valueOf(key), inner, names));
        } else if (value instanceof List<?> list) {
            list.forEach(inner -> collect(field, inner, names));
        } else if (value instanceof String name && NAMES.containsKey(field)) {
            names.add(Map.of("kind", NAMES.get(field), "name", name));
        }
    }
}
