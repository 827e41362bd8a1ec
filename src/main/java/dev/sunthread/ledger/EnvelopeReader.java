package dev.sunthread.ledger;

import dev.sunthread.ledger.body.FieldProblem;
import dev.sunthread.ledger.body.JsonFault;
import dev.sunthread.ledger.body.Shape;
import dev.sunthread.ledger.body.Unreadable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Reads one line of JSON into an envelope, naming every problem of its head. */
public final class EnvelopeReader {

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private EnvelopeReader() {}

    /** @throws Unreadable if the line is not JSON, or the envelope lacks a field or has one that can't be read */
    public static Envelope read(String line) {
        return read(parse(line));
    }

    /** Reads a parsed line. @throws Unreadable as {@link #read(String)} does */
    public static Envelope read(JsonNode json) {
        if (!(json instanceof ObjectNode whole)) {
            throw Unreadable.at("line", "is not a JSON object", "Give one envelope as a JSON object on one line");
        }
        List<FieldProblem> problems = Expressible.problems(whole);
        ObjectNode headOnly = shallowCopy(whole);
        JsonNode body = headOnly.remove("body");
        EnvelopeHead head = readHead(headOnly, problems);
        if (!(body instanceof ObjectNode)) {
            problems.add(new FieldProblem("body", body == null ? "is missing" : "is not an object", "Give an object"));
        }
        if (head == null || !problems.isEmpty() || !(body instanceof ObjectNode object)) {
            throw new Unreadable(problems);
        }
        return new Envelope(head, object, CanonicalJson.of(whole));
    }

    /** The same fields in an object of their own. */
    public static ObjectNode shallowCopy(ObjectNode json) {
        return JsonNodeFactory.instance.objectNode().setAll(json);
    }

    private static @Nullable EnvelopeHead readHead(ObjectNode json, List<FieldProblem> problems) {
        try {
            return Shape.of(EnvelopeHead.class).read(json, "envelope");
        } catch (Unreadable e) {
            problems.addAll(e.problems());
            return null;
        }
    }

    /** The line as JSON. @throws Unreadable if it is none */
    public static JsonNode parse(String line) {
        try {
            return JSON.readTree(line);
        } catch (JacksonException e) {
            throw Unreadable.at(
                    "line",
                    "is not readable as JSON: " + JsonFault.words(e),
                    "Correct the line so that it is one JSON object");
        }
    }
}
