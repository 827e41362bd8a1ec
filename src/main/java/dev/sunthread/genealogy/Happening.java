package dev.sunthread.genealogy;

import dev.sunthread.kernel.TraceRef;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A recorded step, cure run or test run: from when to when, and what it names.
 *
 * @param operation the code of a step's operation
 * @param under the recipe or specification of a run
 */
record Happening(
        TraceRef node,
        long entry,
        Moment start,
        Moment end,
        Set<TraceRef> units,
        Set<TraceRef> carriers,
        @Nullable String operation,
        @Nullable RunDemand under) {

    /** From its early start to its late end. */
    Moment at() {
        return new Moment(start.early(), end.late());
    }

    static Happening step(long entry, Moment start, Moment end, Set<TraceRef> units, String operation) {
        return new Happening(TraceRef.step(entry), entry, start, end, units, Set.of(), operation, null);
    }
}
