package dev.sunthread.genealogy.demand;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** A released route: from when it is in force, in microseconds, and its operations in their order. */
public record RouteRevision(long entry, long item, long effective, List<Operation> operations) implements InForce {

    /**
     * One operation.
     *
     * @param consumes each item it takes in, with itself and its approved alternates
     */
    public record Operation(
            int sequence, String code, boolean unitAlone, Map<Long, Set<Long>> consumes, Set<RunDemand> demands) {

        private boolean takes(Collection<Long> items) {
            return consumes.values().stream().anyMatch(taken -> !Collections.disjoint(taken, items));
        }
    }

    /** How many of its operations demand the run; each wants one of its own. */
    public int times(RunDemand run) {
        return Math.toIntExact(operations.stream()
                .filter(operation -> operation.demands().contains(run))
                .count());
    }

    /** The sequence of the first operation that takes in one of these items, if one does. */
    public Stream<Integer> firstThatTakes(Collection<Long> items) {
        return operations.stream()
                .filter(operation -> operation.takes(items))
                .map(Operation::sequence)
                .min(Integer::compare)
                .stream();
    }
}
