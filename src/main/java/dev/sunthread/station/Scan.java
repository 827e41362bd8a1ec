package dev.sunthread.station;

import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;

/**
 * What was scanned, typed or pressed at a station.
 *
 * @param id given by the page; the same id sent again does nothing and gets the same word
 * @param text as the scanner sent it
 * @param at when it was scanned, by the clock of the page
 * @param kept whether the page kept it while the server was away, so that it tells what was done already
 */
public record Scan(String id, String text, OffsetDateTime at, boolean kept) {

    /** The journal tells times to the microsecond. */
    public Scan {
        at = at.truncatedTo(ChronoUnit.MICROS);
    }
}
