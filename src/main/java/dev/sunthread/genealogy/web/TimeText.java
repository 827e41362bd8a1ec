package dev.sunthread.genealogy.web;

import dev.sunthread.ledger.body.Unreadable;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/** Reads a time as it stands in an address. */
final class TimeText {

    private TimeText() {}

    /** The time, in the plant's zone if it has no offset; absent if nothing is given. */
    static @Nullable OffsetDateTime read(@Nullable String given, String field, ZoneId zone) {
        if (given == null || given.isBlank()) {
            return null;
        }
        // an address that is not encoded turns the plus sign of an offset into a space
        String text = given.strip().replace(' ', '+');
        try {
            return text.matches(".*T.*(Z|[+-].*)")
                    ? OffsetDateTime.parse(text)
                    : LocalDateTime.parse(text).atZone(zone).toOffsetDateTime();
        } catch (DateTimeException e) {
            throw Unreadable.at(field, "is not a date and time", "Write it as 2026-03-02T10:15:04+01:00");
        }
    }
}
