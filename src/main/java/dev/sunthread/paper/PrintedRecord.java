package dev.sunthread.paper;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * A record on a sheet and what became of it.
 *
 * @param id its id as printed
 * @param by who wrote it, if it was entered
 * @param enteredBy who entered it
 * @param enteredAt when it was entered
 * @param occurredAt the time on it
 * @param fate why it will not be entered
 * @param why how that is known
 */
public record PrintedRecord(
        String id,
        @Nullable String by,
        @Nullable String enteredBy,
        @Nullable OffsetDateTime enteredAt,
        @Nullable OffsetDateTime occurredAt,
        @Nullable Fate fate,
        @Nullable String why) {

    public boolean isEntered() {
        return enteredAt != null;
    }

    /** Whether nobody knows yet what it tells. */
    public boolean isOpen() {
        return enteredAt == null && fate == null;
    }
}
