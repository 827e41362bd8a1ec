package dev.sunthread.web.home;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/** An open hold with what it holds: a lot, a container, or a unit. */
public record HeldThing(
        String entry,
        int ordinal,
        String reason,
        OffsetDateTime since,
        @Nullable String lot,
        @Nullable String container,
        @Nullable String item,
        @Nullable String serial,
        @Nullable String issuer) {}
