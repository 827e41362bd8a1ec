package dev.sunthread.genealogy.records;

import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.List;

/** Reads what was put into what, and taken out again. */
public interface PlacementRecords {

    /** Installations and removals of these units or lots, with all that may contradict them. */
    PlacementFacts of(Collection<TraceRef> children);

    /** Installations and removals of what is inside these units, with all that may contradict them. */
    PlacementFacts in(Collection<TraceRef> parents);

    /** Loads and unloads of these units and carriers as what is carried, with all that may contradict them. */
    PlacementFacts carrying(Collection<TraceRef> carried);

    /** Loads and unloads of these carriers, with all that may contradict them. */
    PlacementFacts carriedBy(Collection<TraceRef> carriers);

    /** When these units were put into parents, shipped or scrapped. */
    List<Elsewhere> elsewhere(Collection<TraceRef> units);
}
