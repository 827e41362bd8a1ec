package dev.sunthread.genealogy;

import java.util.Map;
import java.util.Set;

/** A released structure: from when it is in force, in microseconds, and the items that may fill each position. */
record StructureRevision(long entry, long item, long effective, Map<String, Set<Long>> positions) implements InForce {}
