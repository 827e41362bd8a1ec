package dev.sunthread.genealogy;

import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeHead;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** One thing said in a random plant, as its envelope tells it. */
record Said(String id, String kind, OffsetDateTime at, Map<String, Object> body) {

    private static final JsonMapper JSON = JsonMapper.shared();

    Envelope envelope() {
        return Envelope.of(new EnvelopeHead(id, kind, 1, at, "op-1", "test"), (ObjectNode) JSON.valueToTree(body));
    }

    /** The id of what a void or correction takes back, null for anything else. */
    @Nullable
    String target() {
        return kind.equals("void") || kind.equals("correction") ? text("entry") : null;
    }

    long instant() {
        return micros(at);
    }

    String text(String field) {
        return (String) Objects.requireNonNull(body.get(field), field);
    }

    @Nullable
    String textOrNull(String field) {
        return (String) body.get(field);
    }

    @Nullable
    OffsetDateTime momentOrNull(String field) {
        String text = textOrNull(field);
        return text == null ? null : OffsetDateTime.parse(text);
    }

    Map<String, Object> map(String field) {
        return map(body, field);
    }

    List<Map<String, Object>> maps(String field) {
        return maps(body, field);
    }

    @SuppressWarnings("unchecked")
    List<String> texts(String field) {
        return (List<String>) Objects.requireNonNull(body.get(field), field);
    }

    List<String> serials(String field) {
        return maps(field).stream()
                .map(unit -> (String) Objects.requireNonNull(unit.get("serial")))
                .distinct()
                .toList();
    }

    @SuppressWarnings("unchecked")
    static Map<String, Object> map(Map<String, Object> body, String field) {
        return (Map<String, Object>) Objects.requireNonNull(body.get(field), field);
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> maps(Map<String, Object> body, String field) {
        return (List<Map<String, Object>>) Objects.requireNonNull(body.get(field), field);
    }

    static long micros(OffsetDateTime at) {
        return ChronoUnit.MICROS.between(Instant.EPOCH, at.toInstant());
    }
}
