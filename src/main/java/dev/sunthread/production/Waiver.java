package dev.sunthread.production;

import dev.sunthread.catalog.Demand;
import java.util.Collection;
import java.util.Map;
import java.util.Set;

/** Says which units may go on without what a route demands of them, because a person signed for it. */
public interface Waiver {

    /** Which of these units may go on without it, as known now. */
    Set<Long> waived(Demand demand, Collection<Long> units);

    /** Which operations of its route each of these units may go on without, as known now. */
    Map<Long, Set<String>> operationsNotDone(Collection<Long> units);
}
