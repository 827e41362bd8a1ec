package dev.sunthread.genealogy;

import java.util.List;

/** Recorded facts of things put into things and taken out again. */
record PlacementFacts(List<Installation> installations, List<Removal> removals) {

    static final PlacementFacts NONE = new PlacementFacts(List.of(), List.of());
}
