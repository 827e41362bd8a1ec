package dev.sunthread.web.unit;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Material that went into a unit at a step, as recorded.
 *
 * @param lot the lot, if its label was scanned
 * @param position the position it came from, if recorded
 * @param loaded the lots recorded as loaded at that position during the step
 */
public record UsedLot(
        OffsetDateTime at,
        String operation,
        String station,
        String item,
        @Nullable String lot,
        @Nullable String position,
        @Nullable BigDecimal quantity,
        @Nullable String unitOfMeasure,
        List<String> loaded) {}
