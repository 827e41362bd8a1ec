package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.walk.Moment;
import java.util.Collection;

/** The documented purges and change-overs of one position, which end what earlier lots may still carry over. */
record CleanPoints(Collection<Moment> moments) {

    /**
     * From when on a lot that left at this moment carries over no more: the late end of the first clean point known to
     * be after it. A tie isn't after, for the lot may have been on the position still.
     */
    long endOfCarryOver(Moment left) {
        return moments.stream()
                .filter(left::startsAndEndsBefore)
                .mapToLong(Moment::late)
                .reduce(Long.MAX_VALUE, Math::min);
    }
}
