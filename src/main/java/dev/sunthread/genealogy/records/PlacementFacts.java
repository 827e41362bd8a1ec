package dev.sunthread.genealogy.records;

import dev.sunthread.kernel.TraceRef;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Recorded facts of things put into things and taken out again. */
public record PlacementFacts(List<Installation> installations, List<Removal> removals) {

    public static final PlacementFacts NONE = new PlacementFacts(List.of(), List.of());

    public boolean isNone() {
        return installations.isEmpty() && removals.isEmpty();
    }

    public PlacementFacts and(PlacementFacts more) {
        return more.isNone()
                ? this
                : new PlacementFacts(
                        Stream.concat(installations.stream(), more.installations.stream())
                                .toList(),
                        Stream.concat(removals.stream(), more.removals.stream()).toList());
    }

    /** Those of other parents or carriers than these. */
    public PlacementFacts notIn(Set<TraceRef> parents) {
        return new PlacementFacts(
                installations.stream()
                        .filter(one -> !parents.contains(one.parent()))
                        .toList(),
                removals.stream().filter(one -> !parents.contains(one.parent())).toList());
    }

    /** Those that one of these entries tells. */
    public PlacementFacts among(Set<Long> entries) {
        return new PlacementFacts(
                installations.stream()
                        .filter(one -> entries.contains(one.entry()))
                        .toList(),
                removals.stream().filter(one -> entries.contains(one.entry())).toList());
    }

    /** Those that none of these entries tells. */
    public PlacementFacts without(Set<Long> entries) {
        return new PlacementFacts(
                installations.stream()
                        .filter(one -> !entries.contains(one.entry()))
                        .toList(),
                removals.stream().filter(one -> !entries.contains(one.entry())).toList());
    }
}
