package dev.sunthread.demo.told;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Bodies of envelopes as the reference of kinds describes them. */
public final class Bodies {

    private Bodies() {}

    /** Names and values by turns: text, whole numbers, yes or no, moments, objects, lists of these; nothing for what is left out. */
    public static ObjectNode of(Object... pairs) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        for (int i = 0; i < pairs.length; i += 2) {
            put(json, String.valueOf(pairs[i]), pairs[i + 1]);
        }
        return json;
    }

    private static void put(ObjectNode json, String name, Object value) {
        if (value instanceof ObjectNode node) {
            json.set(name, node);
        } else if (value instanceof Integer number) {
            json.put(name, number);
        } else if (value instanceof Boolean flag) {
            json.put(name, flag);
        } else if (value instanceof OffsetDateTime moment) {
            json.put(name, PlantTime.written(moment));
        } else if (value instanceof List<?> members) {
            json.set(name, list(members));
        } else if (value instanceof Optional<?> perhaps) {
            perhaps.ifPresent(one -> put(json, name, one));
        } else {
            json.put(name, value.toString());
        }
    }

    private static ArrayNode list(List<?> members) {
        ArrayNode json = JsonNodeFactory.instance.arrayNode();
        members.forEach(member -> {
            if (member instanceof ObjectNode node) {
                json.add(node);
            } else {
                json.add(member.toString());
            }
        });
        return json;
    }

    public static ObjectNode value(String name, String value, String unitOfMeasure) {
        return of("name", name, "value", value, "unitOfMeasure", unitOfMeasure);
    }

    /** An installation of a unit; a removal reads the same. */
    public static ObjectNode move(ObjectNode child, ObjectNode parent, String position, String station) {
        return of("child", of("unit", child), "parent", parent, "position", position, "station", station);
    }
}
