package dev.sunthread.station;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * What is loaded at a position and how long and how far it goes.
 *
 * @param called the container's label, or the lot's number
 * @param left how much the records leave of it; absent if they do not tell
 * @param goodUntil when it may no longer be used: the lot has expired, or the container was open too long
 * @param hold why it must come off; absent if it may stay
 */
public record Remaining(
        String position,
        String called,
        @Nullable String item,
        @Nullable BigDecimal left,
        String unitOfMeasure,
        @Nullable OffsetDateTime goodUntil,
        @Nullable String hold) {}
