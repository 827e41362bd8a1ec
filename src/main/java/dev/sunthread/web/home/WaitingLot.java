package dev.sunthread.web.home;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A received lot for which no incoming release is recorded. */
public record WaitingLot(
        String lot,
        String item,
        OffsetDateTime receivedAt,
        BigDecimal quantity,
        String unitOfMeasure,
        @Nullable String supplier,
        List<String> supplierLots) {}
