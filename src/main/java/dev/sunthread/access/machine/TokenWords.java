package dev.sunthread.access.machine;

import dev.sunthread.access.Right;
import java.time.OffsetDateTime;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What an administrator says of a token to be made. */
public record TokenWords(
        String mark,
        String purpose,
        @Nullable String station,
        Set<Right> rights,
        @Nullable OffsetDateTime validUntil) {}
