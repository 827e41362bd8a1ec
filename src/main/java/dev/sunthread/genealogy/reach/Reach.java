package dev.sunthread.genealogy.reach;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What a happening reaches: whatever it gives a unit it gives to every unit inside it at any moment from its start to
 * its end, at any depth; one that names an installed unit acts on the outermost parent at that time, with all inside;
 * one that names a carrier acts on all that is on it. Only where a released route says so it acts on the unit alone.
 */
public final class Reach {

    private final Containment containment;
    private final Function<Collection<Happening>, Map<Happening, Set<TraceRef>>> actAloneOn;
    private final Map<Happening, Map<TraceRef, Certainty>> known = new HashMap<>();
    private final Map<Happening, Map<TraceRef, Moment>> starts = new HashMap<>();

    /** {@code actAloneOn} gives those of the named units on which each happening acts and on nothing inside or around. */
    public Reach(Containment containment, Function<Collection<Happening>, Map<Happening, Set<TraceRef>>> actAloneOn) {
        this.containment = containment;
        this.actAloneOn = actAloneOn;
    }

    /** Every unit reached, certain if it surely was in the reach at some moment of the happening. */
    public Map<TraceRef, Certainty> of(Happening happening) {
        learn(List.of(happening));
        return known.getOrDefault(happening, Map.of());
    }

    /** When it began to act on a unit in its reach: later than on the others if the unit came in meanwhile. */
    public Moment start(Happening happening, TraceRef unit) {
        learn(List.of(happening));
        return starts.getOrDefault(happening, Map.of()).getOrDefault(unit, happening.start());
    }

    /** A unit and everything that was ever inside it. */
    public Set<TraceRef> everInside(TraceRef unit) {
        return containment.everInside(List.of(unit));
    }

    /** Reads ahead what was ever inside these units. */
    public void learnInside(Collection<TraceRef> units) {
        containment.everInside(units);
    }

    /** Computes the reach of all these with few reads. */
    public void learn(Collection<Happening> happenings) {
        List<Happening> next = happenings.stream()
                .filter(happening -> !known.containsKey(happening))
                .distinct()
                .toList();
        Map<Happening, Set<TraceRef>> alone = actAloneOn.apply(next);
        containment.bornAgain(
                next.stream().flatMap(happening -> happening.units().stream()).toList());
        List<Spread> spreads = next.stream()
                .map(happening -> new Spread(happening, alone.getOrDefault(happening, Set.of()), containment))
                .toList();
        spread(spreads, containment.loads(), Edge::from);
        spreads.forEach(Spread::openUnits);
        spread(spreads, containment.parents(), Edge::to);
        spreads.forEach(Spread::openWhole);
        spread(spreads, containment.children(), Edge::from);
        spreads.forEach(spread -> {
            known.put(spread.happening, spread.reached());
            starts.put(spread.happening, spread.cameInMeanwhile());
        });
    }

    private static void spread(List<Spread> spreads, Containment.Stays stays, Function<Edge, TraceRef> far) {
        List<Spread> open = spreads;
        while (!open.isEmpty()) {
            stays.learn(open.stream().flatMap(spread -> spread.open.stream()).toList());
            open.forEach(spread -> spread.round(stays, far));
            open = open.stream().filter(spread -> !spread.open.isEmpty()).toList();
        }
    }

    /** How far one happening has spread. */
    private static final class Spread {

        private final Happening happening;
        private final Set<TraceRef> alone;
        private final Map<TraceRef, List<Overlap>> met = new TreeMap<>();
        private List<TraceRef> open;

        Spread(Happening happening, Set<TraceRef> alone, Containment containment) {
            this.happening = happening;
            this.alone = alone;
            Set<TraceRef> twice = containment.bornAgain(happening.units());
            happening.units().forEach(unit -> add(unit, twice.contains(unit) ? Overlap.POSSIBLY_WHOLE : Overlap.WHOLE));
            happening.carriers().forEach(carrier -> add(carrier, Overlap.WHOLE));
            this.open = List.copyOf(happening.carriers());
        }

        void openUnits() {
            open = units();
        }

        // while it acted on a parent it acted on all in it, at whatever moment the named unit was there
        void openWhole() {
            open = units();
            open.stream()
                    .filter(unit -> !happening.units().contains(unit))
                    .forEach(unit -> add(unit, Overlap.POSSIBLY_WHOLE));
        }

        void round(Containment.Stays stays, Function<Edge, TraceRef> far) {
            List<TraceRef> next = new ArrayList<>();
            for (TraceRef node : open) {
                for (Edge stay : stays.of(node)) {
                    TraceRef end = far.apply(stay);
                    if (end.kind() != TraceKind.LOT && cross(node, stay, end)) {
                        next.add(end);
                    }
                }
            }
            open = next;
        }

        private boolean cross(TraceRef node, Edge stay, TraceRef end) {
            boolean added = false;
            for (Overlap overlap : List.copyOf(met.getOrDefault(node, List.of()))) {
                Overlap within = overlap.during(stay);
                added |= within.mayBeIn(happening) && add(end, within);
            }
            return added;
        }

        private boolean add(TraceRef node, Overlap overlap) {
            List<Overlap> overlaps = met.computeIfAbsent(node, any -> new ArrayList<>());
            return overlaps.stream().noneMatch(known -> known.includes(overlap)) && overlaps.add(overlap);
        }

        private List<TraceRef> units() {
            return met.keySet().stream()
                    .filter(node -> node.kind() == TraceKind.UNIT && !alone.contains(node))
                    .toList();
        }

        Map<TraceRef, Certainty> reached() {
            Map<TraceRef, Certainty> reached = new TreeMap<>();
            met.forEach((node, overlaps) -> {
                if (node.kind() == TraceKind.UNIT) {
                    boolean sure = overlaps.stream().anyMatch(overlap -> overlap.surelyIsIn(happening));
                    reached.put(node, sure ? Certainty.CERTAIN : Certainty.POSSIBLE);
                }
            });
            return reached;
        }

        Map<TraceRef, Moment> cameInMeanwhile() {
            Moment start = happening.start();
            Map<TraceRef, Moment> starts = new HashMap<>();
            met.forEach((node, overlaps) -> overlaps.stream()
                    .filter(overlap -> overlap.surelyIsIn(happening))
                    .mapToLong(Overlap::sureFrom)
                    .min()
                    .ifPresent(surely -> {
                        if (surely > start.late()) {
                            starts.put(node, new Moment(start.early(), surely));
                        }
                    }));
            return starts;
        }
    }
}
