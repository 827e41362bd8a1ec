package dev.sunthread.ledger;

import dev.sunthread.testing.Plant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Envelopes that say what happens to units of a {@link Plant}; the same call always gives the same envelope. */
final class Said {

    private Said() {}

    static Envelope birth(String serial) {
        return birth("RCV", serial);
    }

    static Envelope birth(String item, String... serials) {
        List<Map<String, String>> units = new ArrayList<>();
        for (String serial : serials) {
            units.add(Map.of("item", item, "serial", serial));
        }
        return envelope("birth-" + item + serials[0], "birth", Map.of("units", units));
    }

    static Envelope step(String serial) {
        var unit = Map.of("item", "RCV", "serial", serial);
        return envelope(
                "step-" + serial, "step", Map.of("operation", "look", "station", "BOND", "units", List.of(unit)));
    }

    static Envelope installation(String serial, String wall) {
        return envelope(
                "put-" + serial + wall,
                "installation",
                Map.of(
                        "child", Map.of("unit", Map.of("item", "RCV", "serial", serial)),
                        "parent", Map.of("item", "WALL", "serial", wall),
                        "position", serial));
    }

    private static Envelope envelope(String id, String kind, Map<String, Object> body) {
        return Envelope.of(new EnvelopeHead(id, kind, 1, Plant.at("08:00"), "op-1", "test"), (ObjectNode)
                JsonMapper.shared().valueToTree(body));
    }
}
