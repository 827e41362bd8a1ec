package dev.sunthread.inbox;

import java.time.OffsetDateTime;

/** A finding that no person settled yet; it is named by the envelope that raised it and its number there. */
public record OpenFinding(
        String entry,
        int ordinal,
        String rule,
        String sentence,
        String remedy,
        OffsetDateTime occurredAt,
        String source) {}
