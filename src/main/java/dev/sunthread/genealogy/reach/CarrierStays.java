package dev.sunthread.genealogy.reach;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.records.Installation;
import dev.sunthread.genealogy.records.PlacementFacts;
import dev.sunthread.genealogy.records.Removal;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.kernel.TraceRef;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Stays on carriers, concluded for each carrier by itself. An unload whose child is the carrier took everything off.
 * Only an unload that is recorded proves that something was on a carrier until then: without one its whole stay is
 * possible.
 */
final class CarrierStays {

    private final List<Installation> loads;
    private final List<Removal> unloads;

    private CarrierStays(List<Installation> loads, List<Removal> unloads) {
        this.loads = loads;
        this.unloads = unloads;
    }

    static List<Edge> of(PlacementFacts placed) {
        Map<TraceRef, List<Installation>> loads =
                placed.installations().stream().collect(Collectors.groupingBy(Installation::parent));
        Map<TraceRef, List<Removal>> unloads =
                placed.removals().stream().collect(Collectors.groupingBy(Removal::parent));
        return Stream.concat(loads.keySet().stream(), unloads.keySet().stream())
                .distinct()
                .flatMap(carrier -> new CarrierStays(
                                loads.getOrDefault(carrier, List.of()), unloads.getOrDefault(carrier, List.of()))
                        .edges())
                .toList();
    }

    private Stream<Edge> edges() {
        List<Removal> each = unloads.stream()
                .flatMap(unload -> isOfAll(unload) ? emptied(unload) : Stream.of(unload))
                .toList();
        return InstallationEdges.of(loads, each).stream()
                .map(stay -> stay.stayEnd().late() == Long.MAX_VALUE ? stay.atMost(Certainty.POSSIBLE) : stay);
    }

    private static boolean isOfAll(Removal unload) {
        return unload.child().equals(unload.parent());
    }

    private Stream<Removal> emptied(Removal all) {
        return loads.stream()
                .filter(load -> !all.at().surelyBefore(load.at()))
                .filter(load -> unloads.stream().noneMatch(other -> tookOff(other, load, all)))
                .map(load -> new Removal(all.entry(), load.child(), all.parent(), load.position(), all.at()))
                .distinct();
    }

    private static boolean tookOff(Removal other, Installation load, Removal all) {
        return other.entry() != all.entry()
                && (isOfAll(other) || other.child().equals(load.child()))
                && load.at().surelyBefore(other.at())
                && other.at().surelyBefore(all.at());
    }
}
