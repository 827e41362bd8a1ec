package dev.sunthread.web.compare;

import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import org.springframework.web.util.UriUtils;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * An answer that is kept, with the question as it was asked.
 *
 * @param asked the question as JSON; its members are named as the parameters of the trace page
 * @param lines how many lines it has
 */
public record KeptAnswer(String id, String hash, String asked, long cutoff, OffsetDateTime computedAt, long lines) {

    /** The page of this answer. */
    public String address() {
        StringJoiner parameters = new StringJoiner("&");
        for (Map.Entry<String, JsonNode> member :
                JsonMapper.shared().readTree(asked).properties()) {
            JsonNode value = member.getValue();
            String text = value.isObject() ? value.toString() : value.asString();
            parameters.add(member.getKey() + "=" + UriUtils.encode(text, StandardCharsets.UTF_8));
        }
        return "/trace?" + parameters;
    }

    /** The page of its lines of one level and class; of every class if it is empty. */
    public String lines(String level, String certainty) {
        String ofClass = certainty.isEmpty() ? "" : "&certainty=" + certainty;
        return address() + "&level=" + UriUtils.encode(level, StandardCharsets.UTF_8) + ofClass + "#lines";
    }

    /** The same without members that say nothing, such as a window that is open at both ends. */
    private static JsonNode said(JsonNode value) {
        if (value instanceof ArrayNode several) {
            ArrayNode all = several.arrayNode();
            several.forEach(one -> all.add(said(one)));
            return all;
        }
        if (!(value instanceof ObjectNode whole)) {
            return value;
        }
        ObjectNode kept = whole.objectNode();
        whole.properties().forEach(member -> {
            JsonNode told = said(member.getValue());
            if (!told.isNull() && !(told.isContainer() && told.isEmpty())) {
                kept.set(member.getKey(), told);
            }
        });
        return kept;
    }

    /** What was asked, in words. */
    public String words() {
        JsonNode question = JsonMapper.shared().readTree(asked);
        boolean forward = question.path("way").asString("").equals("FORWARD");
        String root = "";
        for (String name : List.of("lot", "supplierLot", "scope", "item", "serial")) {
            if (question.has(name)) {
                JsonNode value = question.get(name);
                root += " " + (value.isObject() ? said(value).toString() : value.asString());
            }
        }
        String wider = question.has("wider") ? ", wider" : "";
        return (forward ? "where did" + root + " go" : "what is in" + root) + wider;
    }
}
