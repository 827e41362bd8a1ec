package dev.sunthread.access.web;

import dev.sunthread.access.Right;
import dev.sunthread.access.machine.TokenWords;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.format.annotation.DateTimeFormat;

/**
 * A token as an administrator fills it in.
 *
 * @param until the last day it holds, in the plant's zone; none if it holds until it is revoked
 */
public record TokenForm(
        @Nullable String mark,
        @Nullable String purpose,
        @Nullable String station,
        @Nullable Set<Right> rights,

        @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) @Nullable
        LocalDate until) {

    static TokenForm empty() {
        return new TokenForm("", "", "", Set.of(Right.WORK, Right.LOOK_UP), null);
    }

    TokenWords words(ZoneId zone) {
        String at = stripped(station);
        return new TokenWords(
                stripped(mark),
                stripped(purpose),
                at.isEmpty() ? null : at,
                rights == null ? Set.of() : rights,
                until == null ? null : until.plusDays(1).atStartOfDay(zone).toOffsetDateTime());
    }

    /** Whether a right is ticked. */
    public boolean has(Right right) {
        return rights != null && rights.contains(right);
    }

    private static String stripped(@Nullable String text) {
        return text == null ? "" : text.strip();
    }
}
