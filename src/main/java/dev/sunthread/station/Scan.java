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
 * @param within what is proven of when it was scanned, where {@code at} is not; absent where that is proven
 */
public record Scan(
        String id,
        String text,
        OffsetDateTime at,
        boolean kept,
        @Nullable Place place,
        @Nullable Within within) {

    /** The number of a scan among those of one page; a later scan has a higher one. */
    public record Place(UUID page, long sequence) {}

    /**
     * What is proven of a time that a clock told which anybody may set.
     *
     * @param from it was not before; absent if nothing proves a begin
     * @param told what the clock said
     */
    public record Within(@Nullable OffsetDateTime from, OffsetDateTime to, OffsetDateTime told) {

        public Within {
            from = from == null ? null : from.truncatedTo(ChronoUnit.MICROS);
            to = to.truncatedTo(ChronoUnit.MICROS);
        }

        /** The same where it can have been at this time too. */
        Within with(OffsetDateTime at) {
            return new Within(from == null || from.isBefore(at) ? from : at, to.isAfter(at) ? to : at, told);
        }

        /** What is told if it can have been then, else the nearest time that it can. */
        public OffsetDateTime nearest() {
            return told.isAfter(to) ? to : from != null && told.isBefore(from) ? from : told;
        }

        /** Whether the clock told a time at which it was not. */
        public boolean isToldOutside() {
            return told.isAfter(to) || from != null && told.isBefore(from);
        }
    }

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

    public Scan(String id, String text, OffsetDateTime at, boolean kept, @Nullable Place place) {
        this(id, text, at, kept, place, null);
    }

    /** The same as one that tells what was done already. */
    public Scan late() {
        return new Scan(id, text, at, true, place, within);
    }

    /** The same at another time, which it can have been if its own is not proven. */
    public Scan at(OffsetDateTime other) {
        return new Scan(
                id,
                text,
                other,
                kept,
                place,
                within == null ? null : within.with(other.truncatedTo(ChronoUnit.MICROS)));
    }

    /** The same of which this is proven. */
    public Scan within(Within proven) {
        return new Scan(id, text, proven.nearest(), kept, place, proven);
    }
}
