package dev.sunthread.web.lot;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * A time during which a lot was loaded at a position.
 *
 * @param until when it was taken off or another lot was loaded; absent while it is loaded
 */
public record Charged(
        String station,
        String position,
        OffsetDateTime from,
        @Nullable OffsetDateTime until,
        String entry) {}
