package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.walk.Moment;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Released limits of what a position carries over: after so many uses nothing of the lot before is left. A unit that
 * was worked on several times counts once, for the record may be doubled.
 */
public record CarryOverLimits(List<Limit> limits, Collection<Moment> uses) {

    public static final CarryOverLimits NONE = new CarryOverLimits(List.of(), List.of());

    /** In force from an instant on, in microseconds; without a number of uses there is no limit any more. */
    public record Limit(long effective, @Nullable Integer uses) {}

    /** The last instant at which a lot that left at this moment may carry over; without end if no limit says so. */
    public long endOfCarryOver(Moment left) {
        Integer limit = inForce(left);
        if (limit == null || left.late() == Long.MAX_VALUE) {
            return Long.MAX_VALUE;
        }
        return limit == 0
                ? left.late()
                : uses.stream()
                        .filter(left::surelyBefore)
                        .map(Moment::late)
                        .sorted()
                        .skip(limit - 1L)
                        .findFirst()
                        .orElse(Long.MAX_VALUE);
    }

    private @Nullable Integer inForce(Moment left) {
        Integer most = null;
        for (int i = 0; i < limits.size(); i++) {
            boolean begun = limits.get(i).effective() <= left.late();
            boolean replaced = i + 1 < limits.size() && limits.get(i + 1).effective() <= left.early();
            Integer uses = limits.get(i).uses();
            if (begun && !replaced) {
                if (uses == null) {
                    return null;
                }
                most = most == null ? uses : Integer.valueOf(Math.max(most, uses));
            }
        }
        return most;
    }
}
