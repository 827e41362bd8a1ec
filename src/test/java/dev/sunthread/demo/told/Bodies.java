package dev.sunthread.demo.told;

import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Bodies of envelopes as the reference of kinds describes them. */
public final class Bodies {

    private Bodies() {}

    /** Names and texts by turns. */
    public static ObjectNode of(String... pairs) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        for (int i = 0; i < pairs.length; i += 2) {
            json.put(pairs[i], pairs[i + 1]);
        }
        return json;
    }

    public static ArrayNode list(List<ObjectNode> members) {
        ArrayNode json = JsonNodeFactory.instance.arrayNode();
        members.forEach(json::add);
        return json;
    }

    public static ArrayNode texts(List<String> members) {
        ArrayNode json = JsonNodeFactory.instance.arrayNode();
        members.forEach(json::add);
        return json;
    }

    public static ObjectNode unit(String item, String serial) {
        return of("item", item, "serial", serial);
    }

    public static ObjectNode use(String item, @Nullable String lot, @Nullable String position) {
        ObjectNode json = of("item", item);
        if (lot != null) {
            json.put("lot", lot);
        }
        if (position != null) {
            json.put("position", position);
        }
        return json;
    }

    /** A use with how much went into each unit. */
    public static ObjectNode use(ObjectNode use, String quantity, String unitOfMeasure) {
        return use.put("quantity", quantity).put("unitOfMeasure", unitOfMeasure);
    }

    public static ObjectNode value(String name, String value, String unitOfMeasure) {
        return of("name", name, "value", value, "unitOfMeasure", unitOfMeasure);
    }

    public static ObjectNode birth(List<ObjectNode> units, String station) {
        ObjectNode json = of();
        json.set("units", list(units));
        return json.put("station", station);
    }

    /** An installation of a unit or, if the child names a lot, of a part; a removal reads the same. */
    public static ObjectNode move(ObjectNode child, ObjectNode parent, String position) {
        ObjectNode json = of();
        json.set("child", child);
        json.set("parent", parent);
        return json.put("position", position);
    }

    public static ObjectNode unitChild(ObjectNode unit) {
        ObjectNode json = of();
        json.set("unit", unit);
        return json;
    }

    public static ObjectNode partChild(String lot) {
        return of("lot", lot, "quantity", "1", "unitOfMeasure", "pcs");
    }

    public static ObjectNode step(String operation, String station, OffsetDateTime startedAt, List<ObjectNode> units) {
        ObjectNode json = of("operation", operation, "station", station);
        json.set("units", list(units));
        return json.put("startedAt", PlantTime.written(startedAt));
    }
}
