package dev.sunthread.genealogy;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of the genealogy.
 *
 * @param cutoff the ledger position up to which records count; absent for all that is recorded now
 * @param at a time for which the answer is asked beside ever, now and at shipment
 */
public record TraceQuestion(
        Way way, Root root, @Nullable Long cutoff, @Nullable OffsetDateTime at) {}
