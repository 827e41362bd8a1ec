package dev.sunthread.genealogy;

import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.EveryPath;
import dev.sunthread.genealogy.walk.History;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The answers of a small plant, found by writing every path down. */
final class AnswersByHand {

    /** The classes of one line of an answer, null where it is not affected. */
    record Classes(
            Certainty ever,
            @Nullable Certainty now,
            @Nullable Certainty atShipment,
            @Nullable Certainty at) {}

    /** A shipment as said: when it left, and the units it names. */
    record Shipped(long instant, Set<TraceRef> units) {}

    private final List<Edge> edges;
    private final List<Shipped> shipments;
    private final Map<TraceRef, EveryPath> paths = new TreeMap<>();
    private final Map<Question, Map<TraceRef, Map<TraceRef, Certainty>>> known = new HashMap<>();

    AnswersByHand(FactsByHand facts, EdgesByHand read, Map<String, TraceRef> nodes) {
        this.edges = read.all();
        this.shipments = facts.of("shipment")
                .map(ship -> new Shipped(
                        ship.instant(),
                        ship.serials("units").stream()
                                .map(serial -> Objects.requireNonNull(nodes.get(serial)))
                                .collect(Collectors.toSet())))
                .toList();
        History history = History.of(edges.toArray(Edge[]::new));
        nodes.values().forEach(node -> paths.put(node, new EveryPath(history, node, read.start(node))));
    }

    List<Edge> edges() {
        return edges;
    }

    List<Shipped> shipments() {
        return shipments;
    }

    /** The strongest class with which the suspects reach each node. */
    Map<TraceRef, Certainty> forward(Collection<TraceRef> suspects, Question question) {
        Map<TraceRef, Certainty> reached = new TreeMap<>();
        suspects.forEach(suspect -> matrix(question)
                .getOrDefault(suspect, Map.of())
                .forEach((node, certainty) -> reached.merge(node, certainty, AnswersByHand::stronger)));
        reached.keySet().retainAll(paths.keySet());
        return reached;
    }

    /** The strongest class with which each node reaches the targets: the same matrix read the other way. */
    Map<TraceRef, Certainty> backward(Collection<TraceRef> targets, Question question) {
        Map<TraceRef, Certainty> reaching = new TreeMap<>();
        matrix(question)
                .forEach((node, reached) -> targets.stream()
                        .filter(reached::containsKey)
                        .forEach(target -> reaching.merge(node, reached.get(target), AnswersByHand::stronger)));
        return reaching;
    }

    Map<TraceRef, Classes> answer(Way way, Collection<TraceRef> roots, long at) {
        Map<TraceRef, Certainty> now = search(way, roots, Question.NOW);
        Map<TraceRef, Certainty> then = search(way, roots, Question.at(at));
        Map<TraceRef, Certainty> shipped = atShipment(way, roots);
        Map<TraceRef, Classes> lines = new TreeMap<>();
        search(way, roots, Question.EVER)
                .forEach((node, ever) ->
                        lines.put(node, new Classes(ever, now.get(node), shipped.get(node), then.get(node))));
        lines.keySet().removeAll(roots);
        return lines;
    }

    private Map<TraceRef, Certainty> atShipment(Way way, Collection<TraceRef> roots) {
        Map<TraceRef, Certainty> classes = new TreeMap<>();
        for (Shipped shipment : shipments) {
            for (TraceRef root : roots) {
                search(way, List.of(root), Question.at(shipment.instant())).forEach((node, certainty) -> {
                    Certainty carriage = carried(shipment, way == Way.BACKWARD ? root : node);
                    if (carriage != null) {
                        classes.merge(node, Certainty.weakest(certainty, carriage), AnswersByHand::stronger);
                    }
                });
            }
        }
        return classes;
    }

    private Map<TraceRef, Certainty> search(Way way, Collection<TraceRef> roots, Question question) {
        return way == Way.FORWARD ? forward(roots, question) : backward(roots, question);
    }

    private @Nullable Certainty carried(Shipped shipment, TraceRef unit) {
        return Stream.of(Certainty.values())
                .filter(certainty -> carried(shipment, unit, certainty))
                .findFirst()
                .orElse(null);
    }

    private boolean carried(Shipped shipment, TraceRef unit, Certainty certainty) {
        boolean sure = certainty == Certainty.CERTAIN;
        Set<TraceRef> around = new HashSet<>(Set.of(unit));
        Deque<TraceRef> open = new ArrayDeque<>(around);
        while (!open.isEmpty()) {
            TraceRef node = open.remove();
            edges.stream()
                    .filter(edge -> edge.from().equals(node) && edge.placesUnit())
                    .filter(edge -> edge.certainty().isAtLeast(certainty))
                    .filter(edge -> (sure ? edge.begin().late() : edge.begin().early()) <= shipment.instant()
                            && (sure ? edge.stayEnd().early() : edge.stayEnd().late()) > shipment.instant())
                    .map(Edge::to)
                    .filter(around::add)
                    .forEach(open::add);
        }
        return around.stream().anyMatch(shipment.units()::contains);
    }

    private Map<TraceRef, Map<TraceRef, Certainty>> matrix(Question question) {
        return known.computeIfAbsent(question, this::writeDown);
    }

    private Map<TraceRef, Map<TraceRef, Certainty>> writeDown(Question question) {
        Map<TraceRef, Map<TraceRef, Certainty>> matrix = new TreeMap<>();
        paths.forEach((node, from) -> {
            Map<TraceRef, Certainty> reached = new TreeMap<>();
            for (Certainty certainty : List.of(Certainty.UNPROVEN, Certainty.POSSIBLE, Certainty.CERTAIN)) {
                from.reached(certainty, question).keySet().forEach(end -> reached.put(end, certainty));
            }
            matrix.put(node, reached);
        });
        return matrix;
    }

    private static Certainty stronger(Certainty one, Certainty other) {
        return one.isAtLeast(other) ? one : other;
    }
}
