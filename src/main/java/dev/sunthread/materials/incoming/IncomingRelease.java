package dev.sunthread.materials.incoming;

import java.time.OffsetDateTime;

/**
 * One incoming release of a lot, or its rejection.
 *
 * @param inspected what was looked at
 * @param entry the id of the envelope that told it
 */
public record IncomingRelease(Verdict verdict, String inspected, OffsetDateTime at, String actor, String entry) {}
