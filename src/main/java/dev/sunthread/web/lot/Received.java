package dev.sunthread.web.lot;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One receipt of a lot, with the supplier's own lots it consists of. */
public record Received(
        OffsetDateTime at,
        String item,
        BigDecimal quantity,
        String unitOfMeasure,
        @Nullable String supplier,
        List<String> supplierLots,
        @Nullable OffsetDateTime expiresAt,
        String entry) {}
