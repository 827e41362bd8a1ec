package dev.sunthread.station.work;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * What is loaded at a position of a station.
 *
 * @param item its item; absent if no origin of the lot tells it
 * @param lotId the lot's internal number
 * @param containerId the container's internal number
 * @param hold why it may not be used; absent if it may
 */
public record Loaded(
        String position,
        String lot,
        @Nullable String container,
        long lotId,
        @Nullable Long containerId,
        @Nullable String item,
        OffsetDateTime since,
        @Nullable OffsetDateTime expiresAt,
        @Nullable String hold) {}
