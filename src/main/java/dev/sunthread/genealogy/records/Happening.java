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
 * @param clock the station whose clock told its times in their order, if that is known
 */
public record Happening(
        TraceRef node,
        long entry,
        Moment start,
        Moment end,
        Set<TraceRef> units,
        Set<TraceRef> carriers,
        @Nullable String operation,
        @Nullable RunDemand under,
        @Nullable Long clock) {

    /** One whose times were told by any clock. */
    public Happening(
            TraceRef node,
            long entry,
            Moment start,
            Moment end,
            Set<TraceRef> units,
            Set<TraceRef> carriers,
            @Nullable String operation,
            @Nullable RunDemand under) {
        this(node, entry, start, end, units, carriers, operation, under, null);
    }

    /** Whether this surely began no earlier than the other did; what one clock told is in its order. */
    public boolean surelyBeganSince(Happening other) {
        boolean oneClock = clock != null && clock.equals(other.clock);
        return oneClock
                ? start.early() >= other.start.early() && start.late() >= other.start.late()
                : start.early() >= other.start.late();
    }

    /** From its early start to its late end. */
    public Moment at() {
        return new Moment(start.early(), end.late());
    }

    public static Happening step(
            long entry, Moment start, Moment end, Set<TraceRef> units, String operation, @Nullable Long clock) {
        return new Happening(TraceRef.step(entry), entry, start, end, units, Set.of(), operation, null, clock);
    }
}
