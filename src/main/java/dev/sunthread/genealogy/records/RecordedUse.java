package dev.sunthread.genealogy.records;

import dev.sunthread.genealogy.position.Use;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import org.jspecify.annotations.Nullable;

/**
 * A use as a step recorded it, or the unloading of a position as a new lot.
 *
 * @param item what it took; absent for an unloading, which takes whatever is there
 * @param lot the lot that was scanned, or that the scanned container is of
 * @param into the lot as which an unloading went on; absent for a step, whose units it went into
 * @param ended when it ended as its clock told it, in microseconds
 */
public record RecordedUse(
        long entry,
        @Nullable Long item,
        @Nullable Long lot,
        @Nullable Long container,
        @Nullable Long position,
        long station,
        String stationCode,
        String operation,
        Moment at,
        long ended,
        @Nullable Long into) {

    public Use use() {
        return new Use(at, item == null ? -1 : item, lot == null ? null : TraceRef.lot(lot));
    }

    public TraceRef step() {
        return TraceRef.step(entry);
    }
}
