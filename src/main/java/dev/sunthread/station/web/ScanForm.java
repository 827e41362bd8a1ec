package dev.sunthread.station.web;

import dev.sunthread.station.Scan;
import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A scan as the page sends it.
 *
 * @param id given by the page's script, or by the server where no script runs
 * @param age how long ago it was scanned, in milliseconds; so the clock of the device need not be right
 * @param kept whether the page kept it because the server was away; absent where no script runs
 */
record ScanForm(
        @Nullable String id,
        @Nullable String text,
        @Nullable Long age,
        @Nullable Boolean kept) {

    private static final Duration LONGEST = Duration.ofDays(30);
    private static final int LONGEST_TEXT = 4000;

    boolean isSomething() {
        return text != null && !text.isBlank();
    }

    Scan scan(Clock clock) {
        long ago = age == null ? 0 : Math.min(Math.max(age, 0), LONGEST.toMillis());
        String scanned = text == null ? "" : text.substring(0, Math.min(text.length(), LONGEST_TEXT));
        String given = id != null && id.matches("[A-Za-z0-9][A-Za-z0-9._:-]{0,79}")
                ? id
                : UUID.randomUUID().toString();
        return new Scan(
                given, scanned, OffsetDateTime.now(clock).minus(Duration.ofMillis(ago)), Boolean.TRUE.equals(kept));
    }
}
