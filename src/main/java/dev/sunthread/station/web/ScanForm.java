package dev.sunthread.station.web;

import dev.sunthread.station.Scan;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A scan as the page sends it.
 *
 * @param id given by the page's script, or by the server where no script runs
 * @param age how long ago it was scanned, in milliseconds; absent where no script runs
 * @param proven whether a clock that nobody sets told the age; otherwise that of the device did, which may have been set
 * @param until no later than this it was scanned, in milliseconds since 1970 as the server told the page when it was opened
 * @param at when it was scanned, in milliseconds since 1970 by the server's clock, reckoned from when the page last heard
 *     the server and what passed since; absent if it never did. Neither the clock of the device nor the way counts in it
 * @param kept whether the page kept it because the server was away; absent where no script runs
 * @param page the name of the page, and {@code sequence} the number of the scan among those of the page
 */
record ScanForm(
        @Nullable String id,
        @Nullable String text,
        @Nullable Long age,
        @Nullable Boolean proven,
        @Nullable Long until,
        @Nullable Long at,
        @Nullable Boolean kept,
        @Nullable UUID page,
        @Nullable Long sequence) {

    private static final Duration LONGEST = Duration.ofDays(30);
    /** What the journal can tell; a device that lost its time says 1970. */
    private static final Instant FIRST_TOLD = Instant.parse("2000-01-02T00:00:00Z");

    private static final Instant LAST_TOLD = Instant.parse("2099-12-30T00:00:00Z");
    private static final int LONGEST_TEXT = 4000;
    /** What comes later than this was not waited for: it tells what was done. The page waits for three seconds. */
    private static final Duration LATE = Duration.ofSeconds(5);

    boolean isSomething() {
        return text != null && !text.isBlank();
    }

    Scan scan(Clock clock) {
        String scanned = text == null ? "" : text.substring(0, Math.min(text.length(), LONGEST_TEXT));
        String given = id != null && id.matches("[A-Za-z0-9][A-Za-z0-9._:-]{0,79}")
                ? id
                : UUID.randomUUID().toString();
        Duration ago = ago(clock);
        OffsetDateTime now = OffsetDateTime.now(clock);
        Scan scan = new Scan(
                given,
                scanned,
                now.minus(ago),
                Boolean.TRUE.equals(kept) || ago.compareTo(LATE) > 0,
                page == null || sequence == null ? null : new Scan.Place(page, sequence));
        return isProven() ? scan : scan.within(new Scan.Within(null, latest(now), told(now)));
    }

    private boolean isProven() {
        return at != null || age == null || Boolean.TRUE.equals(proven);
    }

    private OffsetDateTime latest(OffsetDateTime now) {
        OffsetDateTime opened =
                until == null ? now : Instant.ofEpochMilli(Math.max(0, until)).atOffset(now.getOffset());
        return opened.isBefore(now) ? opened : now;
    }

    // a clock that was set back tells of what is still to come
    private OffsetDateTime told(OffsetDateTime now) {
        long millis =
                age == null ? now.toInstant().toEpochMilli() : now.toInstant().toEpochMilli() - age;
        long within = Math.max(FIRST_TOLD.toEpochMilli(), Math.min(millis, LAST_TOLD.toEpochMilli()));
        return Instant.ofEpochMilli(within).atOffset(now.getOffset());
    }

    private Duration ago(Clock clock) {
        long millis = at != null ? clock.millis() - at : age != null ? age : 0;
        return Duration.ofMillis(Math.min(Math.max(millis, 0), LONGEST.toMillis()));
    }
}
