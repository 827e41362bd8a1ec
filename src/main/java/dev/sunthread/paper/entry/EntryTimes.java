package dev.sunthread.paper.entry;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;

/** Writes times as the journal does. */
final class EntryTimes {

    private EntryTimes() {}

    static String written(OffsetDateTime at) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at);
    }
}
