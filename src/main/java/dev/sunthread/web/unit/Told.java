package dev.sunthread.web.unit;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * One happening of a unit as an entry tells it; the other unit or lot it names may be absent, and so may what else it
 * names: a run or a carrier.
 *
 * @param station where it was recorded to happen
 * @param voidedBy the entry that took it back, if one did
 */
public record Told(
        String entry,
        OffsetDateTime at,
        String said,
        @Nullable String item,
        @Nullable String serial,
        @Nullable String issuer,
        @Nullable String lot,
        @Nullable String what,
        @Nullable String name,
        @Nullable String station,
        String actor,
        String source,
        OffsetDateTime recordedAt,
        @Nullable String voidedBy,
        @Nullable String voidedWhy) {}
