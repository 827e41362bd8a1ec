package dev.sunthread.journal;

import dev.sunthread.ledger.body.FieldShape;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Values at the ends of what a field takes, written as JSON. */
final class OddValues {

    private static final List<String> DECIMALS =
            List.of("\"0.000000001\"", "\"999999999999999.999999999\"", "\"-999999999999999.999999999\"", "\"-0.0\"");

    private OddValues() {}

    static List<String> of(FieldShape field) {
        Class<?> type = field.component().getType();
        if (type == BigDecimal.class) {
            return DECIMALS;
        }
        if (type == OffsetDateTime.class) {
            return List.of("\"2000-01-01T00:00:00+14:00\"", "\"2099-12-31T23:59:59.999999-14:00\"");
        }
        if (type == int.class) {
            return List.of("2147483647", "-2147483648", "0", "1");
        }
        if (type == Boolean.class) {
            return List.of("false", "true");
        }
        if (type == String.class) {
            return List.of("\"?\"", "\"" + longest(field) + "\"", "\"bond-1-000002\"", "\"desk-000001\"");
        }
        return Stream.of(type.isEnum() ? type.getEnumConstants() : new Object[0])
                .map(choice -> "\"" + choice.toString().toLowerCase(Locale.ROOT) + "\"")
                .toList();
    }

    private static String longest(FieldShape field) {
        return switch (field.described().text()) {
            case CODE -> "\u00df".repeat(64);
            case ID -> "z".repeat(100);
            case NAME -> "'".repeat(200);
            case SHA256 -> "0".repeat(64);
            case BASE64 -> "A".repeat(1_398_104);
            case NOTE, RAW -> "\\\\".repeat(2000);
        };
    }
}
