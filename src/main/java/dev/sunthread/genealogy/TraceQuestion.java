package dev.sunthread.genealogy;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of the genealogy.
 *
 * @param cutoff the ledger position up to which records count; absent for all that is recorded now
 * @param wider whether every happening reaches inside, also where a route says that it acts on a unit alone
 * @param at a time for which the answer is asked beside ever, now and at shipment
 */
public record TraceQuestion(
        Way way, Root root, @Nullable Long cutoff, @Nullable OffsetDateTime at, boolean wider) {

    /** A question in which what acts on a unit alone by its route reaches nothing inside. */
    public TraceQuestion(Way way, Root root, @Nullable Long cutoff, @Nullable OffsetDateTime at) {
        this(way, root, cutoff, at, false);
    }
}
