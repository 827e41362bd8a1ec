package dev.sunthread.genealogy.demand;

import java.util.Set;

/** Something that a route or structure demands of every unit of an item. */
public sealed interface UnitDemand {

    long item();

    /** Operations that prove, beside that the unit left, that it was due. */
    Set<String> later();

    /** That an operation takes in one of the accepted items. */
    record OfMaterial(long item, String operation, Set<Long> accepted, Set<String> later) implements UnitDemand {}

    /** That runs under one definition are done, one for each operation that demands it, and since that was done last. */
    record OfRun(long item, RunDemand run, int times, String operation, Set<String> later) implements UnitDemand {}

    /** That something is in each of these positions. */
    record OfChildren(long item, Set<String> positions, Set<String> later) implements UnitDemand {}
}
