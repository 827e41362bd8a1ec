package dev.sunthread.ledger;

import java.time.OffsetDateTime;

/** An entry with the position that the sealer gave it. */
public record SealedEntry(long position, OffsetDateTime recordedAt, String envelope, byte[] hash) {}
