package dev.sunthread.scan.meaning;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One field of a label.
 *
 * @param identifier what stands before the value, such as {@code 10} or {@code 1T}; empty for plain text
 * @param value as printed, case and leading zeros kept; may be empty
 * @param date the day it says, if it says one; a day nought is the last of its month
 * @param amount the quantity it says, if it says one
 */
public record Element(
        String identifier,
        Meaning meaning,
        String value,
        @Nullable LocalDate date,
        @Nullable Amount amount) {

    public static Element of(String identifier, Meaning meaning, String value) {
        return new Element(identifier, meaning, value, null, null);
    }
}
