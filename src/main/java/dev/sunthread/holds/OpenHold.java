package dev.sunthread.holds;

import java.time.OffsetDateTime;

/** A hold that is not released, named by the envelope that placed it and its number there. */
public record OpenHold(String entry, int ordinal, String kind, long subject, String reason, OffsetDateTime since) {}
