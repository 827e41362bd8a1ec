package dev.sunthread.web.station;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * A station and the last that is recorded of it.
 *
 * @param lastAt when its last step, charge, clean point or run ended; absent if none is recorded
 * @param lastTold what that was, in words
 */
public record StationContact(
        String station,
        String name,
        @Nullable OffsetDateTime lastAt,
        @Nullable String lastTold) {}
