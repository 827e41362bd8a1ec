package dev.sunthread.web.lot;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/** A unit that a lot went into: at a step, or as a part in a position until it was taken out. */
public record UsedIn(
        OffsetDateTime at,
        String doing,
        @Nullable String station,
        String level,
        String item,
        String serial,
        String issuer,
        @Nullable OffsetDateTime until) {}
