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
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
    private final Map<Happening, Set<TraceRef>> upwards = new HashMap<>();
    private final Map<Happening, Set<TraceRef>> alone = new HashMap<>();

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

    /** An edge along which the happening acts, with the ways it may go on. */
    public Acting acting(Happening happening, Edge edge) {
        learn(List.of(happening));
        return new Acting(
                edge,
                upwards.getOrDefault(happening, Set.of()).contains(edge.to()),
                !alone.getOrDefault(happening, Set.of()).contains(edge.to()));
    }

    /** A unit and everything that was ever inside it. */
    public Set<TraceRef> everInside(TraceRef unit) {
        return containment.everInside(List.of(unit));
    }

    /** A unit and everything that may have been inside it at some instant of a time. */
    public Set<TraceRef> inside(TraceRef unit, Moment during) {
        Map<TraceRef, Set<Moment>> inside = new TreeMap<>();
        inside(unit, during, inside);
        return inside.keySet();
    }

    private void inside(TraceRef unit, Moment during, Map<TraceRef, Set<Moment>> met) {
        Set<Moment> known = met.computeIfAbsent(unit, any -> new HashSet<>());
        if (known.stream().anyMatch(wider -> wider.includes(during))) {
            return;
        }
        known.add(during);
        for (Edge stay : containment.children().of(unit)) {
            long from = Math.max(during.early(), stay.begin().early());
            long to = Math.min(during.late(), stay.lastCrossing().late());
            if (stay.from().kind() == TraceKind.UNIT && from <= to) {
                inside(stay.from(), new Moment(from, to), met);
            }
        }
    }

    /** The instants from which on something else may be in one of these units. */
    public Set<Long> changes(Collection<TraceRef> units) {
        return units.stream()
                .flatMap(unit -> containment.children().of(unit).stream())
                .filter(stay -> stay.from().kind() == TraceKind.UNIT)
                .flatMap(stay ->
                        Stream.of(stay.begin().early(), next(stay.lastCrossing().late())))
                .collect(Collectors.toSet());
    }

    private static long next(long instant) {
        return instant == Long.MAX_VALUE ? instant : instant + 1;
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
        alone.putAll(actAloneOn.apply(next));
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
            upwards.put(spread.happening, spread.upwards);
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
        private Set<TraceRef> upwards = Set.of();

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
            upwards = Set.copyOf(open);
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
