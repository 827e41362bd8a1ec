package dev.sunthread.genealogy.answer;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.Question;
import dev.sunthread.genealogy.Way;
import dev.sunthread.genealogy.answer.Shipments.Shipment;
import dev.sunthread.genealogy.walk.Arrival;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.EdgeSource;
import dev.sunthread.genealogy.walk.GivenEdges;
import dev.sunthread.genealogy.walk.Suspect;
import dev.sunthread.genealogy.walk.Walk;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What the walk finds for one question at one cut-off: every node reached, with its class ever, now, at each shipment
 * and at the time asked.
 */
final class Answer {

    /** A shipment that something was in while affected, and its class then. */
    record Shipped(Shipment shipment, Certainty certainty) {}

    private static final Set<TraceKind> THINGS =
            EnumSet.of(TraceKind.LOT, TraceKind.CONTAINER, TraceKind.UNIT, TraceKind.CURE_RUN, TraceKind.TEST_RUN);

    private final Way way;
    private final Walk walk;
    private final Collection<Suspect> suspects;
    private final Collection<TraceRef> roots;
    private final SortedMap<TraceRef, Arrival> ever;
    private final SortedMap<TraceRef, Arrival> now;
    private final SortedMap<TraceRef, Arrival> at;
    private final Map<TraceRef, List<Shipped>> shipped = new HashMap<>();

    Answer(Way way, Walk walk, Collection<Suspect> suspects, @Nullable Long at) {
        this.way = way;
        this.walk = walk;
        this.suspects = suspects;
        this.roots = suspects.stream().map(Suspect::node).collect(Collectors.toCollection(LinkedHashSet::new));
        this.ever = search(Question.EVER);
        this.now = search(Question.NOW);
        this.at = at == null ? new TreeMap<>() : search(Question.at(at));
    }

    /** Adds the classes at shipment; {@code edges} tell what was inside what. */
    Answer withShipments(Shipments shipments, EdgeSource edges) {
        if (way == Way.BACKWARD) {
            shipments.of(holders(edges)).forEach(shipment -> searchBehind(shipment, shipments));
        } else {
            GivenEdges reached = new GivenEdges(edges.outOf(ever.keySet()));
            shipments.of(units()).forEach(shipment -> searchInside(shipment, reached));
        }
        return this;
    }

    private void searchBehind(Shipment shipment, Shipments shipments) {
        Map<TraceRef, Certainty> found = new HashMap<>();
        for (Certainty carriage : Certainty.values()) {
            Set<TraceRef> carried = roots.stream()
                    .filter(root -> shipments.carried(shipment, root) == carriage)
                    .collect(Collectors.toSet());
            if (!carried.isEmpty()) {
                walk.backward(carried, shipment.then())
                        .forEach((node, arrival) -> found.merge(
                                node, Certainty.weakest(arrival.certainty(), carriage), Certainty::strongest));
            }
        }
        found.forEach((node, certainty) -> keep(shipment, node, certainty));
    }

    // only what a shipment carried can be affected in it: searching all for each would take nodes times shipments
    private void searchInside(Shipment shipment, GivenEdges reached) {
        Question then = shipment.then();
        Set<TraceRef> behind = reached.behind(shipment.units(), then::possiblyCovers);
        behind.addAll(reached.behind(reached.takenOutInto(behind), any -> true));
        Map<TraceRef, Certainty> carriage = carriage(shipment, reached, then);
        Walk inside = walk.over(new GivenEdges(reached.into(behind)));
        inside.forwardFrom(suspects, then).forEach((node, arrival) -> {
            Certainty carried = carriage.get(node);
            if (carried != null) {
                keep(shipment, node, Certainty.weakest(arrival.certainty(), carried));
            }
        });
    }

    // what is affected may be more certain than that it was there
    private static Map<TraceRef, Certainty> carriage(Shipment shipment, GivenEdges reached, Question then) {
        Map<TraceRef, Certainty> carriage = new HashMap<>();
        for (Certainty certainty : Certainty.values()) {
            reached.behind(shipment.units(), edge -> Shipments.places(edge, certainty, then))
                    .forEach(node -> carriage.putIfAbsent(node, certainty));
        }
        return carriage;
    }

    private void keep(Shipment shipment, TraceRef node, Certainty certainty) {
        shipped.computeIfAbsent(node, any -> new ArrayList<>()).add(new Shipped(shipment, certainty));
    }

    private SortedMap<TraceRef, Arrival> search(Question question) {
        return way == Way.FORWARD ? walk.forwardFrom(suspects, question) : walk.backward(roots, question);
    }

    private Set<TraceRef> units() {
        Set<TraceRef> units = new TreeSet<>(ever.keySet());
        units.removeIf(node -> node.kind() != TraceKind.UNIT);
        return units;
    }

    /** The units asked for and all that ever held them. */
    private Set<TraceRef> holders(EdgeSource edges) {
        Set<TraceRef> holders = new HashSet<>(roots);
        Set<TraceRef> open = new HashSet<>(roots);
        while (!open.isEmpty()) {
            Set<TraceRef> next = new HashSet<>();
            edges.outOf(open).stream().filter(Edge::placesUnit).forEach(edge -> next.add(edge.to()));
            next.removeIf(node -> !holders.add(node));
            open = next;
        }
        holders.removeIf(node -> node.kind() != TraceKind.UNIT);
        return holders;
    }

    /** Whether lines tell of it. */
    static boolean isThing(TraceRef node) {
        return THINGS.contains(node.kind());
    }

    /** Every thing reached but the roots themselves, in a fixed order; steps, gaps and kept lines are told in paths. */
    List<Arrival> reached() {
        return ever.values().stream()
                .filter(arrival ->
                        THINGS.contains(arrival.node().kind()) && arrival.node().id() >= 0)
                .filter(arrival -> !roots.contains(arrival.node()))
                .toList();
    }

    /**
     * The thing next to it on its path towards the suspects, of those that the answer has; absent if that is a suspect.
     * Backward a path may lead through a thing that, by its own start, is none of them.
     */
    @Nullable
    TraceRef reachedFrom(Arrival arrival) {
        List<TraceRef> nearest = new ArrayList<>(arrival.path().stream()
                .map(way == Way.FORWARD ? Edge::from : Edge::to)
                .toList());
        if (way == Way.FORWARD) {
            Collections.reverse(nearest);
        }
        return nearest.stream()
                .filter(node -> roots.contains(node)
                        || ever.containsKey(node) && node.id() >= 0 && THINGS.contains(node.kind()))
                .findFirst()
                .filter(node -> !roots.contains(node))
                .orElse(null);
    }

    /** Whether a kept line leads from the thing next to it, or the suspect, to it. */
    boolean isReachedByLine(Arrival arrival) {
        TraceRef near = reachedFrom(arrival);
        List<Edge> path = new ArrayList<>(arrival.path());
        if (way == Way.FORWARD) {
            Collections.reverse(path);
        }
        for (Edge edge : path) {
            if (edge.reason().line().isPresent()) {
                return true;
            }
            if ((way == Way.FORWARD ? edge.from() : edge.to()).equals(near)) {
                return false;
            }
        }
        return false;
    }

    /** The kept lines that are told in reasons, by their entries. */
    Set<Long> linesInReasons() {
        return reached().stream()
                .flatMap(arrival -> arrival.path().stream())
                .flatMapToLong(edge -> edge.reason().line().stream())
                .boxed()
                .collect(Collectors.toSet());
    }

    /** Its class at any time. */
    @Nullable
    Certainty ever(TraceRef node) {
        return certainty(ever, node);
    }

    @Nullable
    Certainty now(TraceRef node) {
        return certainty(now, node);
    }

    @Nullable
    Certainty at(TraceRef node) {
        return certainty(at, node);
    }

    List<Shipped> shipped(TraceRef node) {
        return shipped.getOrDefault(node, List.of());
    }

    /** The strongest class of any shipment. */
    @Nullable
    Certainty atShipment(TraceRef node) {
        return shipped(node).stream()
                .map(Shipped::certainty)
                .min(java.util.Comparator.naturalOrder())
                .orElse(null);
    }

    private static @Nullable Certainty certainty(SortedMap<TraceRef, Arrival> found, TraceRef node) {
        Arrival arrival = found.get(node);
        return arrival == null ? null : arrival.certainty();
    }
}
