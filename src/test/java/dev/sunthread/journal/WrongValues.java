package dev.sunthread.journal;

import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.FieldShape;
import dev.sunthread.ledger.body.TextForm;
import java.lang.reflect.ParameterizedType;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.TreeMap;

/** Values that a field can't take, written as JSON, each with what is wrong about it. */
final class WrongValues {

    private static final String LONG_WHOLE = "9".repeat(400);

    private WrongValues() {}

    /** Wrong values of a field that does not repeat, or of one member of a list. */
    static Map<String, String> of(FieldShape field) {
        Class<?> type = type(field);
        Map<String, String> values = new TreeMap<>(Map.of("null", "null", "list of lists", "[[]]", "true", "true"));
        if (type == String.class) {
            values.putAll(texts(field.described()));
        } else if (type == BigDecimal.class) {
            values.putAll(decimals(field.described()));
        } else if (type == int.class || type == Integer.class) {
            values.putAll(wholes(field.described()));
        } else if (type == OffsetDateTime.class) {
            values.putAll(moments());
        } else if (type.isEnum()) {
            values.putAll(Map.of("unknown word", "\"never\"", "number", "1", "empty text", "\"\""));
        } else if (type == Boolean.class) {
            values.remove("true");
            values.putAll(Map.of("text", "\"true\"", "number", "1"));
        } else {
            values.putAll(Map.of("text", "\"x\"", "number", "7"));
        }
        return values;
    }

    private static Class<?> type(FieldShape field) {
        return field.list()
                ? (Class<?>) ((ParameterizedType) field.component().getGenericType()).getActualTypeArguments()[0]
                : field.component().getType();
    }

    private static Map<String, String> texts(Field described) {
        TextForm form = described.text();
        Map<String, String> texts = new TreeMap<>(
                Map.of("number", "7", "object", "{}", "lone surrogate", "\"A\\ud800B\"", "too long", tooLong(form)));
        if (form != TextForm.RAW) {
            texts.put("NUL", "\"A\\u0000B\"");
            texts.put("control character", "\"A\\u0007B\"");
            texts.put("empty text", "\"\"");
            texts.put("space at the end", "\"A \"");
        }
        return texts;
    }

    private static String tooLong(TextForm form) {
        int longest =
                switch (form) {
                    case CODE -> 64;
                    case ID -> 100;
                    case NAME -> 200;
                    case NOTE -> 2000;
                    case SHA256 -> 64;
                    case BASE64 -> 1_398_104;
                    case RAW -> 1_048_576;
                };
        return "\"" + "A".repeat(longest + 1) + "\"";
    }

    private static Map<String, String> decimals(Field described) {
        Map<String, String> decimals = new TreeMap<>(Map.of(
                "number", "1.5",
                "exponent", "\"1e5\"",
                "too many digits", "\"1234567890123456\"",
                "too fine", "\"0.1234567891\"",
                "comma", "\"1,5\"",
                "word", "\"NaN\"",
                "beyond any measure", "1e400"));
        if (described.positive()) {
            decimals.put("nought", "\"0\"");
            decimals.put("negative", "\"-1\"");
        }
        return decimals;
    }

    private static Map<String, String> wholes(Field described) {
        Map<String, String> wholes = new TreeMap<>(Map.of(
                "text", "\"1\"", "fraction", "1.5", "too large", "2147483648", "400 digits", LONG_WHOLE, "1.0", "1.0"));
        if (described.positive()) {
            wholes.put("nought", "0");
        }
        return wholes;
    }

    private static Map<String, String> moments() {
        return Map.of(
                "number", "1772438400",
                "no offset", "\"2026-03-02T06:15:30\"",
                "no such day", "\"2026-02-30T06:15:30Z\"",
                "no such offset", "\"2026-03-02T06:15:30+14:15\"",
                "another century", "\"1999-03-02T06:15:30Z\"",
                "nanoseconds", "\"2026-03-02T06:15:30.1234567Z\"",
                "word", "\"yesterday\"");
    }
}
