package dev.sunthread.genealogy.reach;

import dev.sunthread.genealogy.line.KeptStays;
import dev.sunthread.genealogy.records.Elsewhere;
import dev.sunthread.genealogy.records.Installation;
import dev.sunthread.genealogy.records.LineRecords;
import dev.sunthread.genealogy.records.PlacementFacts;
import dev.sunthread.genealogy.records.PlacementRecords;
import dev.sunthread.genealogy.records.SignRecords;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is in what: stays of children in parents and of things on carriers, each read once. */
public final class Containment {

    private final Stays parents;
    private final Stays children;
    private final Stays carriers;
    private final Stays loads;

    private final PlacementRecords records;
    private final SignRecords signs;
    private final KeptStays kept;

    public Containment(PlacementRecords records, SignRecords signs, LineRecords lines) {
        this.records = records;
        this.signs = signs;
        this.kept = new KeptStays(lines.open());
        this.parents = new Stays(nodes -> edges(records.of(nodes)), Edge::from);
        this.children = new Stays(nodes -> edges(records.in(nodes)), Edge::to);
        this.carriers = new Stays(nodes -> onCarriers(records.carrying(nodes), nodes), Edge::from);
        this.loads = new Stays(nodes -> onCarriers(records.carriedBy(nodes)), Edge::to);
    }

    /** Stays of units and lots in the units that they were in. */
    public Stays parents() {
        return parents;
    }

    /** Stays of what was in units. */
    public Stays children() {
        return children;
    }

    /** Stays of units and carriers on carriers. */
    public Stays carriers() {
        return carriers;
    }

    /** Stays of what was on carriers. */
    public Stays loads() {
        return loads;
    }

    /** These units and all that may ever have been in one with them. */
    public Set<TraceRef> companions(Collection<TraceRef> units) {
        return closure(everAround(units), children, Edge::from);
    }

    /** These units and all that they ever were inside of. */
    public Set<TraceRef> everAround(Collection<TraceRef> units) {
        return closure(units, parents, Edge::to);
    }

    /** These units and all that was ever inside them. */
    public Set<TraceRef> everInside(Collection<TraceRef> units) {
        return closure(units, children, Edge::from);
    }

    /** Every carrier that one of these was ever on, or a carrier under it. */
    public Set<TraceRef> carriersOf(Collection<TraceRef> units) {
        Set<TraceRef> all = closure(units, carriers, Edge::to);
        all.removeIf(node -> node.kind() != TraceKind.CARRIER);
        return all;
    }

    private static Set<TraceRef> closure(Collection<TraceRef> nodes, Stays stays, Function<Edge, TraceRef> far) {
        Set<TraceRef> closure = new HashSet<>(nodes);
        Collection<TraceRef> open = nodes;
        while (!open.isEmpty()) {
            stays.learn(open);
            List<TraceRef> next = new ArrayList<>();
            for (TraceRef node : open) {
                stays.of(node).stream()
                        .map(far)
                        .filter(other -> other.kind() != TraceKind.LOT && closure.add(other))
                        .forEach(next::add);
            }
            open = next;
        }
        return closure;
    }

    private List<Edge> edges(PlacementFacts placed) {
        return doubted(DoubtedStays.of(
                placed,
                kept.inUnits(),
                kept.takenBack(),
                facts -> InstallationEdges.of(facts.installations(), facts.removals())));
    }

    private List<Edge> onCarriers(PlacementFacts placed) {
        return onCarriers(
                placed, placed.installations().stream().map(Installation::child).collect(Collectors.toSet()));
    }

    private List<Edge> onCarriers(PlacementFacts placed, Collection<TraceRef> carried) {
        List<Elsewhere> elsewhere = records.elsewhere(carried);
        return doubted(DoubtedStays.of(
                placed, kept.onCarriers(), kept.takenBack(), facts -> CarrierStays.of(facts, elsewhere)));
    }

    // with two bodies on one identity a removal may have been of the other one
    private List<Edge> doubted(List<Edge> stays) {
        Set<TraceRef> twice = bornAgain(stays.stream()
                .flatMap(stay -> Stream.of(stay.from(), stay.to()))
                .toList());
        return twice.isEmpty()
                ? stays
                : stays.stream()
                        .map(stay -> twice.contains(stay.from()) || twice.contains(stay.to()) ? stay.doubted() : stay)
                        .toList();
    }

    /** Those of these units of which more than one birth is recorded. */
    public Set<TraceRef> bornAgain(Collection<TraceRef> nodes) {
        return signs
                .bornAgain(nodes.stream()
                        .filter(node -> node.kind() == TraceKind.UNIT)
                        .map(TraceRef::id)
                        .collect(Collectors.toSet()))
                .stream()
                .map(TraceRef::unit)
                .collect(Collectors.toSet());
    }

    /** Stays found from one of their ends. */
    public static final class Stays {

        private final Function<Collection<TraceRef>, List<Edge>> read;
        private final Function<Edge, TraceRef> near;
        private final Map<TraceRef, List<Edge>> known = new HashMap<>();

        private Stays(Function<Collection<TraceRef>, List<Edge>> read, Function<Edge, TraceRef> near) {
            this.read = read;
            this.near = near;
        }

        /** Reads the stays of all these together. */
        public void learn(Collection<TraceRef> nodes) {
            List<TraceRef> missing = nodes.stream()
                    .filter(node -> !known.containsKey(node))
                    .distinct()
                    .toList();
            if (missing.isEmpty()) {
                return;
            }
            missing.forEach(node -> known.put(node, new ArrayList<>()));
            Set<TraceRef> asked = new HashSet<>(missing);
            for (Edge edge : read.apply(missing)) {
                TraceRef end = near.apply(edge);
                if (asked.contains(end)) {
                    known.getOrDefault(end, List.of()).add(edge);
                }
            }
        }

        public List<Edge> of(TraceRef node) {
            learn(List.of(node));
            return known.getOrDefault(node, List.of());
        }
    }
}
