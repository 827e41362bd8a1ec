package dev.sunthread.web.home;

import java.time.OffsetDateTime;

/** One entry of the ledger as the start page lists it. */
public record Happening(
        String id, String kind, OffsetDateTime occurredAt, OffsetDateTime recordedAt, String actor, String source) {}
