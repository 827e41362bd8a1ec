package dev.sunthread.journal;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** A journal in which every kind stands at least once, each line accepted where it stands. */
public final class EveryKind {

    private static final String FILE = "/journal/every-kind.ndjson";

    private EveryKind() {}

    /** Its envelopes in their order, without the journal's first line. */
    public static List<String> lines() {
        return text().lines().skip(1).toList();
    }

    /** The whole journal. */
    public static InputStream stream() {
        return new ByteArrayInputStream(text().getBytes(StandardCharsets.UTF_8));
    }

    /** The line of each kind that says most. */
    public static Map<String, String> examples() {
        Map<String, String> examples = new TreeMap<>();
        for (String line : lines()) {
            examples.merge(kind(line), line, (one, other) -> one.length() >= other.length() ? one : other);
        }
        return examples;
    }

    static String kind(String line) {
        return parsed(line).get("kind").stringValue();
    }

    static ObjectNode parsed(String line) {
        return (ObjectNode) JsonMapper.shared().readTree(line);
    }

    private static String text() {
        try (InputStream file = Objects.requireNonNull(EveryKind.class.getResourceAsStream(FILE))) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
