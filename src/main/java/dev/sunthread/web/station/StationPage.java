package dev.sunthread.web.station;

import dev.sunthread.web.Paged;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Everything the page of a station shows, at one cut-off. */
public record StationPage(
        StationContact contact,
        List<Revision> revisions,
        List<Position> positions,
        List<Equipment> equipment,
        Paged<Step> steps) {

    /** A released revision; the clock is right within so many seconds. */
    public record Revision(String revision, String name, BigDecimal clockUncertainty, OffsetDateTime from) {}

    /**
     * A position with what is loaded there now.
     *
     * @param takes the items that may be loaded there, by the last revision; absent for any
     */
    public record Position(
            String code,
            @Nullable String takes,
            @Nullable String lot,
            @Nullable OffsetDateTime since) {}

    /** Equipment that stands at the station by its last revision. */
    public record Equipment(String code, String name) {}

    /**
     * A step with one of its units.
     *
     * @param units how many units it names
     */
    public record Step(
            OffsetDateTime from,
            OffsetDateTime until,
            String operation,
            long units,
            @Nullable String item,
            @Nullable String serial,
            @Nullable String issuer,
            @Nullable String lot,
            String actor,
            String entry) {}
}
