package dev.sunthread.web.lot;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * A lot that came about from another, or from what was taken out of a position or unit.
 *
 * @param way how it came about, in words
 * @param lot the lot at the other end, if it is one
 * @param other what else is at the other end, in words
 * @param item the item of the lot that came about
 */
public record Made(
        OffsetDateTime at,
        String way,
        @Nullable String lot,
        @Nullable String other,
        @Nullable String container,
        @Nullable String item,
        @Nullable BigDecimal quantity,
        @Nullable String unitOfMeasure,
        String entry) {}
