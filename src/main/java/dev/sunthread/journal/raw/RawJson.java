package dev.sunthread.journal.raw;

import dev.sunthread.kernel.Refused;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;

/** Runs as JSON: the fields of the journal's body with {@code occurredAt} beside them; numbers may be plain numbers. */
final class RawJson {

    private RawJson() {}

    /** @throws Refused if it is neither an object nor an array of objects that each name a run */
    static Map<String, ObjectNode> bodies(String text) {
        JsonNode read = JsonMapper.shared()
                .rebuild()
                .enable(tools.jackson.databind.DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                .build()
                .readTree(text);
        List<JsonNode> runs = read.isArray() ? read.valueStream().toList() : List.of(read);
        Map<String, ObjectNode> bodies = new LinkedHashMap<>();
        for (JsonNode run : runs) {
            if (!(run instanceof ObjectNode body) || !run.path("run").isString()) {
                throw new Refused(
                        "Object " + (bodies.size() + 1) + " names no run", "Give each run its number in the field run");
            }
            numbersAsText(body);
            bodies.put(body.get("run").stringValue(), body);
        }
        return bodies;
    }

    private static void numbersAsText(JsonNode node) {
        if (node instanceof ObjectNode object) {
            object.propertyNames().stream().toList().forEach(name -> {
                JsonNode value = object.get(name);
                if (value.isNumber()) {
                    object.set(name, text(value));
                } else {
                    numbersAsText(value);
                }
            });
        } else if (node instanceof ArrayNode array) {
            for (int i = 0; i < array.size(); i++) {
                if (array.get(i).isNumber()) {
                    array.set(i, text(array.get(i)));
                } else {
                    numbersAsText(array.get(i));
                }
            }
        }
    }

    private static StringNode text(JsonNode number) {
        return StringNode.valueOf(number.decimalValue().toPlainString());
    }
}
