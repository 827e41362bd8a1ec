package dev.sunthread.genealogy;

import dev.sunthread.kernel.TraceRef;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A use as a step recorded it: times in microseconds, and the units it went into. */
record RecordedUse(
        long entry,
        long item,
        @Nullable Long lot,
        @Nullable Long position,
        long station,
        String stationCode,
        String operation,
        long start,
        long end,
        List<Long> units) {

    Use at(Moment moment) {
        return new Use(moment, item, lot == null ? null : TraceRef.lot(lot));
    }
}
