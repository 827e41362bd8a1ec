package dev.sunthread.web.station;

import dev.sunthread.web.Paged;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything the page of a position shows, at one cut-off.
 *
 * @param takes the items that may be loaded there, by the last revision of its station; absent for any
 * @param mixesBack whether what is unloaded goes on as a new lot, by the last revision of its station
 * @param limits released carry-over limits, the newest first
 * @param charges a page of what was loaded when, the newest first
 * @param picture the same page as a picture
 */
public record PositionPage(
        String station,
        String code,
        @Nullable String takes,
        boolean mixesBack,
        List<Limit> limits,
        Paged<Charge> charges,
        ChargePicture picture,
        List<Clean> cleanPoints,
        Paged<StationPage.Step> steps) {

    /** So many uses after a change nothing of the lot before is left, as the evidence proves. */
    public record Limit(int uses, String evidence, String revision, OffsetDateTime from) {}

    /** A lot, or a container of it, that was loaded; until the next charge or a discharge, absent while it is there. */
    public record Charge(
            String lot,
            @Nullable String container,
            OffsetDateTime from,
            @Nullable OffsetDateTime until,
            String actor,
            String entry) {}

    /** A clean point with what proves it. */
    public record Clean(OffsetDateTime at, String evidence, String actor, String entry) {}
}
