package dev.sunthread.genealogy.reach;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.records.Elsewhere;
import dev.sunthread.genealogy.records.Installation;
import dev.sunthread.genealogy.records.PlacementFacts;
import dev.sunthread.genealogy.records.Removal;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Stays on carriers. An unload whose child is the carrier took everything off it. Only an unload that is recorded proves
 * that something was on a carrier until then: without one its whole stay is possible, and so it is if it was told on
 * another carrier meanwhile, was put into a parent, shipped or scrapped, for then an unload is lost.
 */
final class CarrierStays {

    private final List<Installation> loads;
    private final List<Removal> unloads;

    private CarrierStays(List<Installation> loads, List<Removal> unloads) {
        this.loads = loads;
        this.unloads = unloads;
    }

    static List<Edge> of(PlacementFacts placed, Collection<Elsewhere> elsewhere) {
        Map<TraceRef, List<Installation>> loads =
                placed.installations().stream().collect(Collectors.groupingBy(Installation::parent));
        Map<TraceRef, List<Removal>> unloads =
                placed.removals().stream().collect(Collectors.groupingBy(Removal::parent));
        List<Removal> each = unloads.keySet().stream()
                .flatMap(carrier -> new CarrierStays(
                                loads.getOrDefault(carrier, List.of()), unloads.getOrDefault(carrier, List.of()))
                        .unloadsOfEach())
                .toList();
        Map<TraceRef, List<Elsewhere>> left = elsewhere.stream().collect(Collectors.groupingBy(Elsewhere::unit));
        return InstallationEdges.of(placed.installations(), each).stream()
                .map(stay -> isDoubtful(stay, left.getOrDefault(stay.from(), List.of()))
                        ? stay.atMost(Certainty.POSSIBLE)
                        : stay)
                .toList();
    }

    private static boolean isDoubtful(Edge stay, List<Elsewhere> elsewhere) {
        return stay.stayEnd().late() == Long.MAX_VALUE
                || elsewhere.stream()
                        .anyMatch(one ->
                                stay.begin().surelyBefore(one.at()) && one.at().surelyBefore(stay.stayEnd()));
    }

    private Stream<Removal> unloadsOfEach() {
        return unloads.stream().flatMap(unload -> isOfAll(unload) ? emptied(unload) : Stream.of(unload));
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
