package dev.sunthread.materials;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * What is loaded at a position, by its charge.
 *
 * @param charge the entry that told it
 * @param container the container it came in, if that was scanned
 * @param until when it ends; absent while it lasts
 */
public record Loaded(
        long charge,
        long lot,
        @Nullable Long container,
        OffsetDateTime since,
        @Nullable OffsetDateTime until) {

    boolean covers(OffsetDateTime at) {
        return !at.isBefore(since) && (until == null || at.isBefore(until));
    }
}
