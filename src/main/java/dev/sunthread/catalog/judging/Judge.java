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
     * @param checked the check that came next, if it was bad or a radiometer was read; 0 otherwise
     */
    record Case(long entry, long checked) {}

    /** Which errors of equipment count for a case. */
    @FunctionalInterface
    interface Errors {

        /** The errors by which the readings of a run are judged. */
        List<FoundError> of(Case run);
    }
}
