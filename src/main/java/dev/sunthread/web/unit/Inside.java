package dev.sunthread.web.unit;

import dev.sunthread.kernel.UnitId;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something that is or was in a position: a unit with what was in it meanwhile, or a part of a lot.
 *
 * @param until when it was taken out; absent while it is inside
 * @param now whether it is inside the unit that the page is about now
 */
public record Inside(
        String position,
        @Nullable UnitId unit,
        @Nullable String lot,
        String level,
        OffsetDateTime from,
        @Nullable OffsetDateTime until,
        boolean now,
        List<Inside> contents) {}
