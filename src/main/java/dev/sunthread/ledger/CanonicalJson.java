package dev.sunthread.ledger;

import java.io.IOException;
import org.erdtman.jcs.JsonCanonicalizer;
import tools.jackson.databind.JsonNode;

/** The canonical form of JSON by RFC 8785: the same content always gives the same text. */
final class CanonicalJson {

    private CanonicalJson() {}

    static String of(JsonNode json) {
        return of(json.toString());
    }

    /** @throws IllegalArgumentException if the text is not one JSON object or array */
    static String of(String json) {
        try {
            return new JsonCanonicalizer(json).getEncodedString();
        } catch (IOException e) {
            throw new IllegalArgumentException("not canonicalisable: " + e.getMessage(), e);
        }
    }
}
