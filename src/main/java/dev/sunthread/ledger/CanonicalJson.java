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

    /** @throws IllegalArgumentException if the text is not one JSON object or array, or has half of a character pair */
    static String of(String json) {
        try {
            return whole(new JsonCanonicalizer(json).getEncodedString());
        } catch (IOException e) {
            throw new IllegalArgumentException("not canonicalisable: " + e.getMessage(), e);
        }
    }

    /** RFC 8785 section 3.2.2.2: what is no Unicode text has no canonical form. */
    private static String whole(String canonical) {
        if (canonical.codePoints().anyMatch(c -> Character.getType(c) == Character.SURROGATE)) {
            throw new IllegalArgumentException("not canonicalisable: half of a character pair");
        }
        return canonical;
    }
}
