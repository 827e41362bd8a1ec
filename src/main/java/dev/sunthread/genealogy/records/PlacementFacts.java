package dev.sunthread.genealogy.records;

import java.util.List;

/** Recorded facts of things put into things and taken out again. */
public record PlacementFacts(List<Installation> installations, List<Removal> removals) {

    public static final PlacementFacts NONE = new PlacementFacts(List.of(), List.of());
}
