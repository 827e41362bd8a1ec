package dev.sunthread.paper;

import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A sheet of blank records that was printed.
 *
 * @param code its code, with which the id of each of its records begins
 * @param station where it is to be used
 * @param item the item whose route has the operation, if it is for one
 * @param printedBy the mark of who printed it
 * @param records the ids of its records, in their order on paper
 */
public record Sheet(
        String code,
        FormKind form,
        String station,
        @Nullable String item,
        @Nullable String operation,
        OffsetDateTime printedAt,
        String printedBy,
        List<String> records) {}
