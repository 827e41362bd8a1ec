package dev.sunthread.web.carrier;

import dev.sunthread.web.Paged;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything the page of a carrier shows, at one cut-off.
 *
 * @param loads a page of what is and was on it, the newest first
 * @param places the carriers that it is and was on itself, the newest first
 * @param cures the cure runs that name it, the newest first
 */
public record CarrierPage(String code, Paged<Load> loads, List<Load> places, List<Cure> cures) {

    /** A unit or carrier on another, with its position; until it was taken off, or absent while it is there. */
    public record Load(
            @Nullable String item,
            @Nullable String serial,
            @Nullable String issuer,
            @Nullable String carrier,
            @Nullable String position,
            OffsetDateTime from,
            @Nullable OffsetDateTime until,
            String entry) {}

    /** A cure run with the carrier in it. */
    public record Cure(String run, String recipe, String equipment, OffsetDateTime from, OffsetDateTime until) {}
}
