package dev.sunthread.genealogy;

import java.util.List;
import java.util.Map;
import java.util.Set;

/** A released route: from when it is in force, in microseconds, and its operations in their order. */
record RouteRevision(long entry, long item, long effective, List<Operation> operations) implements InForce {

    /**
     * One operation.
     *
     * @param consumes each item it takes in, with itself and its approved alternates
     */
    record Operation(
            int sequence, String code, boolean unitAlone, Map<Long, Set<Long>> consumes, Set<RunDemand> demands) {}
}
