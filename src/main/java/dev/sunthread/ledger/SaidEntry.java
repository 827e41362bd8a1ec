package dev.sunthread.ledger;

import java.time.OffsetDateTime;

/** An entry found by its id: when it occurred, and its envelope in canonical form. */
public record SaidEntry(OffsetDateTime occurredAt, String envelope) {}
