package dev.sunthread.genealogy.demand;

import dev.sunthread.genealogy.walk.Moment;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** A released revision of a definition of an item. */
public interface InForce {

    long entry();

    long item();

    /** From when it is in force, in microseconds. */
    long effective();

    /** The revisions of the item that may have been in force at some instant of the moment; none before the first. */
    static <R extends InForce> List<R> at(Moment moment, long item, Collection<R> revisions) {
        List<R> known = revisions.stream()
                .filter(revision -> revision.item() == item && revision.effective() <= moment.late())
                .sorted(Comparator.<R>comparingLong(InForce::effective).thenComparing(InForce::entry))
                .toList();
        int first = 0;
        for (int i = 0; i < known.size(); i++) {
            if (known.get(i).effective() <= moment.early()) {
                first = i;
            }
        }
        return known.subList(Math.min(first, known.size()), known.size());
    }
}
