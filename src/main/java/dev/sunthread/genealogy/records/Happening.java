package dev.sunthread.genealogy.records;

import dev.sunthread.genealogy.demand.RunDemand;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A recorded step, cure run or test run: from when to when, and what it names.
 *
 * @param operation the code of a step's operation
 * @param under the recipe or specification of a run
 */
public record Happening(
        TraceRef node,
        long entry,
        Moment start,
        Moment end,
        Set<TraceRef> units,
        Set<TraceRef> carriers,
        @Nullable String operation,
        @Nullable RunDemand under) {

    /** From its early start to its late end. */
    public Moment at() {
        return new Moment(start.early(), end.late());
    }

    public static Happening step(long entry, Moment start, Moment end, Set<TraceRef> units, String operation) {
        return new Happening(TraceRef.step(entry), entry, start, end, units, Set.of(), operation, null);
    }
}
