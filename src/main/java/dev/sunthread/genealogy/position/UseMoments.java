package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.walk.Moment;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** The moments of all recorded uses that name one position; each question takes a binary search. */
final class UseMoments {

    private final List<Moment> byEarly;
    private final List<Moment> byLate;
    private final long[] latestEarlySoFar;
    private final long[] latestLateSoFar;
    private final long[] earliestLateFrom;

    UseMoments(Collection<Moment> uses) {
        byEarly = uses.stream().sorted(Comparator.comparingLong(Moment::early)).toList();
        byLate = uses.stream().sorted(Comparator.comparingLong(Moment::late)).toList();
        int count = byEarly.size();
        latestEarlySoFar = new long[count];
        latestLateSoFar = new long[count];
        earliestLateFrom = new long[count];
        for (int i = 0; i < count; i++) {
            int back = count - 1 - i;
            latestEarlySoFar[i] = Math.max(byLate.get(i).early(), i == 0 ? Long.MIN_VALUE : latestEarlySoFar[i - 1]);
            latestLateSoFar[i] = Math.max(byEarly.get(i).late(), i == 0 ? Long.MIN_VALUE : latestLateSoFar[i - 1]);
            earliestLateFrom[back] =
                    Math.min(byEarly.get(back).late(), i == 0 ? Long.MAX_VALUE : earliestLateFrom[back + 1]);
        }
    }

    /** The early end of the last use surely before the moment, since ever if there is none. */
    long lastBefore(Moment moment) {
        int end = Bisection.first(byEarly.size(), i -> byLate.get(i).late() >= moment.early());
        return end == 0 ? Long.MIN_VALUE : latestEarlySoFar[end - 1];
    }

    /** The late end of the first use surely after the moment, without end if there is none. */
    long firstAfter(Moment moment) {
        int first = Bisection.first(byEarly.size(), i -> byEarly.get(i).early() > moment.late());
        return first == byEarly.size() ? Long.MAX_VALUE : earliestLateFrom[first];
    }

    /** The late end of the last use that may have begun by then, since ever if there is none. */
    long lastBegunBy(long instant) {
        int end = Bisection.first(byEarly.size(), i -> byEarly.get(i).early() > instant);
        return end == 0 ? Long.MIN_VALUE : latestLateSoFar[end - 1];
    }
}
