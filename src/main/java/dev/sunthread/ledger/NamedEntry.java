package dev.sunthread.ledger;

import java.time.OffsetDateTime;

/** An entry found by its id: its number and the kind of happening it tells, a correction telling that of its original. */
public record NamedEntry(long number, String id, String kind, int kindVersion, OffsetDateTime occurredAt) {}
