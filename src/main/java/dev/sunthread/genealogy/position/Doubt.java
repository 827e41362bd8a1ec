package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import org.jspecify.annotations.Nullable;

/**
 * What may have happened at a position: a kept line tells it, or a kept line takes its record back. It may be so or not,
 * so what it says is possible, and what it contradicts is no longer certain.
 *
 * @param lot what may have been loaded; null if it names nothing
 * @param item of the lot; null if no record tells it
 * @param comesOn whether the lot came on then; otherwise it may have been there since the change before
 * @param ends whether what was loaded may have come off then
 */
public record Doubt(@Nullable TraceRef lot, @Nullable Long item, boolean comesOn, boolean ends, Moment at, long entry) {

    boolean mayHold(long wanted) {
        return lot != null && (item == null || item == wanted);
    }

    /** Whether what a charge loaded may have come off again by this. */
    boolean mayEnd(Change.Charge charge) {
        return ends
                && at.late() >= charge.at().early()
                && !(comesOn && charge.lot().equals(lot));
    }

    /** Whether it may have left the position empty after one moment and by another. */
    boolean mayEmpty(Moment since, Moment by) {
        return ends && !comesOn && at.late() >= since.early() && at.early() <= by.late();
    }

    boolean isUndated() {
        return at.early() == Long.MIN_VALUE || at.late() == Long.MAX_VALUE;
    }
}
