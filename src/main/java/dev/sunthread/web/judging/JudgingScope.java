package dev.sunthread.web.judging;

import dev.sunthread.catalog.FoundError;
import dev.sunthread.catalog.judging.JudgedAgain;
import java.util.Locale;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The scope that stands for the runs, or the units, with an outcome of what was judged again. */
final class JudgingScope {

    private static final JsonMapper JSON = JsonMapper.shared();

    private JudgingScope() {}

    static String of(String kind, JudgedAgain job, String outcome) {
        JsonNode asked = JSON.readTree(job.asked());
        ObjectNode scope = JSON.createObjectNode();
        scope.put("of", kind + "-verdict");
        scope.put(
                kind.equals(JudgedKinds.CURE) ? "recipe" : "specification",
                asked.get("code").stringValue());
        copy(asked, scope, "revision");
        copy(asked, scope, "equipment");
        ObjectNode window = JSON.createObjectNode();
        copy(asked, window, "from");
        copy(asked, window, "to");
        scope.set("window", window);
        scope.putArray("outcomes").add(outcome.replace(' ', '-'));
        asked.get("errors").forEach(error -> wrong(scope.withArray("errors").addObject(), error));
        return scope.toString();
    }

    private static void wrong(ObjectNode told, JsonNode error) {
        copy(error, told, "sensor");
        told.put("quantity", error.get("quantity").stringValue().toLowerCase(Locale.ROOT));
        copy(error, told, "offset");
        copy(error, told, "percent");
        if (error.get("onset").stringValue().equals(FoundError.Onset.ALWAYS.name())) {
            told.put("always", true);
        }
    }

    private static void copy(JsonNode from, ObjectNode to, String name) {
        JsonNode value = from.get(name);
        if (value != null && !value.isNull()) {
            to.set(name, value);
        }
    }
}
