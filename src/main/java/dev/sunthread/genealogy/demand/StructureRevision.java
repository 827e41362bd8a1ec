package dev.sunthread.genealogy.demand;

import java.util.Collection;
import java.util.Map;
import java.util.Set;

/** A released structure: from when it is in force, in microseconds, and the items that may fill each position. */
public record StructureRevision(long entry, long item, long effective, Map<String, Set<Long>> positions)
        implements InForce {

    /** Whether what these items are taken in as has a position of its own, where it is demanded. */
    public static boolean haveAPlaceFor(Set<Long> items, Collection<StructureRevision> structures) {
        return structures.stream()
                .map(StructureRevision::positions)
                .map(Map::values)
                .anyMatch(positions -> positions.stream().anyMatch(items::equals)
                        || positions.stream().anyMatch(position -> position.containsAll(items)));
    }
}
