package dev.sunthread.web.table;

import dev.sunthread.web.PlantTime;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Writes values into cells. Text that a spreadsheet would take for a formula gets an apostrophe in front; times are
 * written in full, with the plant's offset; several values are joined by " | ".
 */
@Component
class Cells {

    private static final String STARTS_A_FORMULA = "=+-@\t\r\n";

    private final PlantTime time;

    Cells(PlantTime time) {
        this.time = time;
    }

    /** A value as text that no spreadsheet computes. */
    String text(@Nullable Object value) {
        String words = words(value);
        return value instanceof Number ? words : safe(words);
    }

    static String safe(String text) {
        return !text.isEmpty() && STARTS_A_FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    private String words(@Nullable Object value) {
        if (value == null) {
            return "";
        } else if (value instanceof OffsetDateTime at) {
            return time.exact(at);
        } else if (value instanceof BigDecimal number) {
            return number.toPlainString();
        } else if (value instanceof Enum<?> word) {
            return word.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        } else if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        } else if (value instanceof Collection<?> several) {
            return several.stream().map(this::words).collect(Collectors.joining(" | "));
        }
        return value.toString();
    }
}
