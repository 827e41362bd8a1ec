package dev.sunthread.catalog.judging;

import dev.sunthread.catalog.FoundError;
import java.util.Collection;
import java.util.List;
import java.util.Map;

/** Judges runs of one kind by terms, from their raw data alone. */
public interface Judge<T> {

    /**
     * Judges runs by terms.
     *
     * @return one verdict for each case
     */
    Map<Long, Judged> judge(Collection<Case> cases, T terms, Errors errors);

    /**
     * A run that is to be judged.
     *
     * @param entry the entry that recorded it
     * @param checked the check of its equipment that came next, if it was bad; 0 otherwise
     * @param before the last check before it at which a radiometer was read; 0 if there is none, or it is no cure
     * @param after the first check after it at which a radiometer was read; 0 likewise
     */
    record Case(long entry, long checked, long before, long after) {

        /** A run with nothing known of its equipment. */
        public static Case of(long entry) {
            return new Case(entry, 0, 0, 0);
        }
    }

    /** Which errors of equipment count for a case. */
    @FunctionalInterface
    interface Errors {

        /** The errors by which the readings of a run are judged. */
        List<FoundError> of(Case run);
    }
}
