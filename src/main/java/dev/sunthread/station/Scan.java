package dev.sunthread.station;

import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What was scanned, typed or pressed at a station.
 *
 * @param id given by the page; the same id sent again does nothing and gets the same word
 * @param text as the scanner sent it; a character that can't be kept is shown by a sign instead
 * @param at when it was scanned, as near as the page can tell by the server's clock
 * @param kept whether it comes late, so that it tells what was done already
 * @param place where it stands in the order of its page; absent where no page counts
 */
public record Scan(
        String id,
        String text,
        OffsetDateTime at,
        boolean kept,
        @Nullable Place place) {

    /** The number of a scan among those of one page; a later scan has a higher one. */
    public record Place(UUID page, long sequence) {}

    private static final char NOUGHT = '\0';
    private static final char SIGN_OF_NOUGHT = '\u2400';

    /** The journal tells times to the microsecond, and the database keeps no character of number nought. */
    public Scan {
        at = at.truncatedTo(ChronoUnit.MICROS);
        text = text.replace(NOUGHT, SIGN_OF_NOUGHT);
    }

    public Scan(String id, String text, OffsetDateTime at, boolean kept) {
        this(id, text, at, kept, null);
    }

    /** The same as one that tells what was done already. */
    public Scan late() {
        return new Scan(id, text, at, true, place);
    }

    /** The same at another time. */
    public Scan at(OffsetDateTime other) {
        return new Scan(id, text, other, kept, place);
    }
}
