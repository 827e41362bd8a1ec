package dev.sunthread.web.unit;

import dev.sunthread.kernel.UnitId;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something that is or was in a position: a unit with what was in it meanwhile, or a part of a lot.
 *
 * @param until when it was taken out; absent while it is inside
 * @param from absent for a position in which nothing is recorded
 * @param now whether it is inside the unit that the page is about now
 * @param expected the items that a released structure puts there, where nothing is recorded
 */
public record Inside(
        String position,
        @Nullable UnitId unit,
        @Nullable String lot,
        String level,
        @Nullable OffsetDateTime from,
        @Nullable OffsetDateTime until,
        boolean now,
        @Nullable String expected,
        List<Inside> contents) {

    /** A position that a structure names and in which nothing is recorded. */
    static Inside gap(String position, String expected) {
        return new Inside(position, null, null, "nothing recorded", null, null, false, expected, List.of());
    }

    public boolean isGap() {
        return expected != null;
    }

    /** Whether it was in its position at a moment. */
    boolean wasThere(OffsetDateTime at) {
        return from != null && !from.isAfter(at) && (until == null || at.isBefore(until));
    }

    Inside with(List<Inside> others) {
        return new Inside(position, unit, lot, level, from, until, now, expected, others);
    }
}
