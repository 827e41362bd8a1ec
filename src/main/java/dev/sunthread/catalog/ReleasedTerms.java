package dev.sunthread.catalog;

import java.time.OffsetDateTime;

/**
 * A released revision with what it states for computation.
 *
 * @param entry the entry that released it
 * @param effectiveAt from when on it is in force
 */
public record ReleasedTerms<T>(long entry, String revision, String name, OffsetDateTime effectiveAt, T terms) {}
