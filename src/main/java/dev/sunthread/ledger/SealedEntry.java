package dev.sunthread.ledger;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/** An entry with the position that the sealer gave it. */
public record SealedEntry(
        long position, OffsetDateTime recordedAt, @Nullable String recordedBy, String envelope, byte[] hash) {}
