package dev.sunthread.journal;

import java.util.Map;
import java.util.TreeMap;

/** Lines that are no envelope, each in another way, some made out of a valid one whose reason is "to be seen". */
final class StrangeLines {

    private StrangeLines() {}

    static Map<String, String> byWhatIsStrange(String valid) {
        Map<String, String> lines = new TreeMap<>();
        lines.put("no JSON", "hello");
        lines.put("two objects", "{} {}");
        lines.put("a list", "[1,2]");
        lines.put("null", "null");
        lines.put("an open text", "{\"id\":\"");
        lines.put("deep lists", "[".repeat(10_000) + "]".repeat(10_000));
        lines.put("deep objects", "{\"a\":".repeat(10_000) + "1" + "}".repeat(10_000));
        lines.put("deep body", body(valid, "[".repeat(400) + "]".repeat(400)));
        lines.put("long number", body(valid, "1".repeat(10_000)));
        lines.put("number without end", body(valid, "1e999999999"));
        lines.put("small number", body(valid, "1e-999999999"));
        lines.put("many fields", body(valid, manyFields()));
        lines.put("long field name", body(valid, "{\"" + "n".repeat(60_000) + "\":1}"));
        lines.put("spaces behind a name", "{\"lot\":" + " ".repeat(1_000_000) + "x");
        lines.put("names without end", "{\"lot\":[".repeat(100_000));
        lines.put("control characters", "{\"lot\":\"\u0000\u0001\u001f\"}");
        lines.put("escaped halves", "{\"\\ud800\":\"\\udc00\"}");
        lines.put("a first line of another version", "{\"journal\":2}");
        lines.put("an envelope that says journal", valid.replace("{\"id\"", "{\"journal\":1,\"id\""));
        lines.put("an envelope that says end", valid.replace("{\"id\"", "{\"end\":1,\"id\""));
        lines.put("a position that is none", valid.replace("{\"id\"", "{\"position\":{},\"id\""));
        lines.put("a time that is none", valid.replace("{\"id\"", "{\"recordedAt\":[1],\"id\""));
        lines.put("a hash that is none", valid.replace("{\"id\"", "{\"hash\":{\"a\":1},\"id\""));
        lines.put("another hash", valid.replace("{\"id\"", "{\"hash\":\"00\",\"id\""));
        return lines;
    }

    private static String body(String valid, String value) {
        return valid.replace("\"to be seen\"", value);
    }

    private static String manyFields() {
        StringBuilder fields = new StringBuilder("{\"f\":1");
        for (int i = 0; i < 20_000; i++) {
            fields.append(",\"f").append(i).append("\":[{}]");
        }
        return fields.append('}').toString();
    }
}
