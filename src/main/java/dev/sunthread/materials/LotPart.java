package dev.sunthread.materials;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A part of a lot that went into another.
 *
 * @param lot the internal number of the lot it is of
 * @param container the internal number of the container it came from, if that was scanned
 * @param quantity how much, in its unit of measure; both or neither are told
 */
public record LotPart(
        long lot,
        @Nullable Long container,
        @Nullable BigDecimal quantity,
        @Nullable String unitOfMeasure) {}
