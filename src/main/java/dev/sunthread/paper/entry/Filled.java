package dev.sunthread.paper.entry;

import dev.sunthread.paper.FormEntry;
import dev.sunthread.paper.RecordId;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What stands on a record.
 *
 * @param actor the mark of who wrote it
 * @param boxes what stands in each box, by the box's name; blank boxes are left out
 * @param seconds to how many seconds its times are right
 */
public record Filled(
        RecordId id,
        String actor,
        Map<String, String> boxes,
        @Nullable LocalDateTime start,
        @Nullable LocalDateTime end,
        @Nullable ZoneOffset offset,
        int seconds) {

    /** The actor of what nobody can read the name under. */
    public static final String UNREADABLE = FormEntry.UNREADABLE;

    /** What stands in a box. */
    Optional<String> in(String box) {
        return Optional.ofNullable(boxes.get(box));
    }

    /** When it was over. */
    public Optional<OffsetDateTime> endedAt() {
        return at(end);
    }

    /** When it began, if that is said. */
    public Optional<OffsetDateTime> startedAt() {
        return at(start);
    }

    private Optional<OffsetDateTime> at(@Nullable LocalDateTime time) {
        return time == null || offset == null ? Optional.empty() : Optional.of(time.atOffset(offset));
    }
}
