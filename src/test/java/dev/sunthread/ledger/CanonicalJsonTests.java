package dev.sunthread.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.ledger.body.Unreadable;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.OffsetDateTime;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.node.JsonNodeFactory;

/** The canonical form and the hash over it, by published values. */
class CanonicalJsonTests {

    // RFC 8785; testdata/input/arrays.json and its output of cyberphone/json-canonicalization (Apache-2.0)
    @Test
    void sortsNamesAndKeepsTheOrderOfLists() throws NoSuchAlgorithmException {
        String canonical = CanonicalJson.of("[56, {\"d\": true, \"10\": null, \"1\": [ ]}]");
        assertThat(canonical).isEqualTo("[56,{\"1\":[],\"10\":null,\"d\":true}]");
        assertThat(sha256(canonical)).isEqualTo("099601b171cafed97c333f8878d68e7f8c8f795412adb34b2fdcf0e7c7beac42");
    }

    // RFC 8785; testdata structures.json of cyberphone/json-canonicalization (Apache-2.0), hash of its output
    @Test
    void sortsNamesAtEveryDepth() throws NoSuchAlgorithmException {
        String canonical = CanonicalJson.of("""
                {"1": {"f": {"f": "hi","F": 5} ,"\\n": 56.0}, "10": { }, "": "empty", "a": { },
                 "111": [ {"e": "yes","E": "no" } ], "A": { }}
                """);
        assertThat(sha256(canonical)).isEqualTo("605f65004ec2db7692522a0852c22f1c989e036d547e88963d1a3143cf3195d5");
    }

    // RFC 8785 section 3.2.2; testdata values.json of cyberphone/json-canonicalization (Apache-2.0)
    @Test
    void writesValuesInOneWayOnly() throws NoSuchAlgorithmException {
        String canonical = CanonicalJson.of("""
                {"numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
                 "string": "\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\"\\/", "literals": [null, true, false]}
                """);
        assertThat(sha256(canonical)).isEqualTo("2d5e01a318d0f0879ab568c4be289c8b1f64ef8921a53c6277d5e069978baacb");
    }

    // RFC 8785 section 3.2.3; testdata french.json, unicode.json and weird.json of cyberphone/json-canonicalization
    // (Apache-2.0), hashes of their outputs
    @Test
    void sortsByCodeUnitsAndNormalisesNothing() throws NoSuchAlgorithmException {
        assertThat(sha256(CanonicalJson.of("""
                {"peach": "This sorting order", "péché": "is wrong according to French",
                 "pêche": "but canonicalization MUST", "sin": "ignore locale"}
                """)))
                .isEqualTo("d99d0ebdcb0033cb858cfa830ae46bc0fb3309413b271f1da828c89901a27ed5");
        assertThat(sha256(CanonicalJson.of("{\"Unnormalized Unicode\":\"A\\u030a\"}")))
                .isEqualTo("0d99aad92a125196ff887876643fd3206786a84ddce2cee52ba4ad256d2381d3");
        assertThat(sha256(CanonicalJson.of("""
                {"\\u20ac": "Euro Sign", "\\r": "Carriage Return", "\\u000a": "Newline", "1": "One",
                 "\\u0080": "Control\\u007f", "\\ud83d\\ude02": "Smiley", "\\u00f6": "Latin Small Letter O With Diaeresis",
                 "\\ufb33": "Hebrew Letter Dalet With Dagesh", "</script>": "Browser Challenge"}
                """)))
                .isEqualTo("6af595a9aa80110b964b4de3f82a05fa6ae7423005019bacfa2620dddc4e94d1");
    }

    // RFC 8785 appendix B
    @ParameterizedTest
    @CsvSource({
        "4340000000000001, 9007199254740994",
        "4340000000000002, 9007199254740996",
        "444b1ae4d6e2ef50, 1e+21",
        "3eb0c6f7a0b5ed8d, 0.000001",
        "3eb0c6f7a0b5ed8c, 9.999999999999997e-7",
        "8000000000000000, 0"
    })
    void writesNumbersAsEcmascriptDoes(String bits, String written) {
        double number = Double.longBitsToDouble(Long.parseUnsignedLong(bits, 16));
        assertThat(CanonicalJson.of("[" + number + "]")).isEqualTo("[" + written + "]");
    }

    // RFC 9162 section 2.1.1; leaves of the reference tree of certificate-transparency
    @ParameterizedTest
    @CsvSource({
        "'', 6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
        "00, 96a296d224f285c67bee93c30f8a309157f0daa35dc5b87e410b78630a09cfc7",
        "10, 0298d122906dcfc10892cb53a73992fc5b9f493ea4c9badb27b791b4127a7fe7",
        "2021, 07506a85fd9dd2f120eb694f86011e5bb4662e5c415a62917033d4a9624487e7",
        "3031, bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b",
        "40414243, 4271a26be0d8a84f0bd54c8c302e7cb3a3b5d1fa6780a40bcce2873477dab658",
        "5051525354555657, b08693ec2e721597130641e8211e7eedccb4c26413963eee6c1e2ed16ffb1a5f",
        "606162636465666768696a6b6c6d6e6f, 46f6ffadd3d06a09ff3c5860d2755c8b9819db7df44251788c7d8e3180de8eb1"
    })
    void hashesAsALeaf(String data, String hash) {
        String text = new String(HexFormat.of().parseHex(data), StandardCharsets.US_ASCII);
        var head = new EnvelopeHead("a", "b", 1, OffsetDateTime.MIN, "c", "d");
        assertThat(HexFormat.of().formatHex(new Envelope(head, JsonNodeFactory.instance.objectNode(), text).hash()))
                .isEqualTo(hash);
    }

    // RFC 8785 section 3.2.2.2: a lone surrogate must end in an error
    @Test
    void loneSurrogateIsRefusedWhereverItStands() {
        for (String json : new String[] {"[\"\\ud800\"]", "{\"\\udead\":1}", "[\"\ud83d\"]"}) {
            assertThatThrownBy(() -> CanonicalJson.of(json))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("half of a character pair");
        }
        assertThat(CanonicalJson.of("[\"\\ud83d\\ude00\"]")).isEqualTo("[\"\ud83d\ude00\"]");
    }

    @Test
    void refusesWhatHasNoCanonicalForm() {
        String line = "{\"id\":\"a\",\"kind\":\"hold\",\"version\":1,\"occurredAt\":\"2026-03-02T10:00:00Z\","
                + "\"actor\":\"a\",\"source\":\"s\",\"body\":{\"reason\":[%s]}}";
        for (String value : new String[] {"\"\\ud800\"", "{\"\\udc00\":1}", "1e400", "9".repeat(400)}) {
            assertThatThrownBy(() -> EnvelopeReader.read(line.formatted(value)))
                    .isInstanceOf(Unreadable.class)
                    .hasMessageStartingWith("body.reason[0]");
        }
    }

    private static String sha256(String text) throws NoSuchAlgorithmException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    }
}
