package dev.sunthread.catalog.judging;

import dev.sunthread.kernel.verdict.Phrase;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Phrases as they are kept: an object with the key of the message and what stands in its places. */
public final class KeptPhrase {

    private static final JsonMapper JSON = JsonMapper.shared();

    private KeptPhrase() {}

    static String write(Phrase phrase) {
        return JSON.writeValueAsString(phrase);
    }

    /** What was kept, as a phrase. */
    public static Phrase read(String kept) {
        return phrase(JSON.readTree(kept));
    }

    private static Phrase phrase(JsonNode kept) {
        return new Phrase(
                kept.get("code").stringValue(),
                kept.get("places").valueStream().map(KeptPhrase::place).toList());
    }

    private static Object place(JsonNode kept) {
        return kept.isString() ? kept.stringValue() : phrase(kept);
    }
}
