package dev.sunthread.paper;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * A sheet with how many of its records were printed, entered, void and lost. What is left may hide something that
 * happened at the station since the sheet was printed.
 *
 * @param name what the operation is called, if it is for one
 */
public record SheetCount(
        String code,
        FormKind form,
        String station,
        @Nullable String item,
        @Nullable String operation,
        OffsetDateTime printedAt,
        String printedBy,
        int printed,
        int entered,
        int voided,
        int lost) {

    public int open() {
        return printed - entered - voided - lost;
    }
}
