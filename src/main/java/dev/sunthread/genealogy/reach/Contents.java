package dev.sunthread.genealogy.reach;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.records.LotRecords;
import dev.sunthread.genealogy.records.Making;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.genealogy.walk.Reason;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * How lots and containers came to be. A lot that was filled into containers has a content: what was taken of it without
 * the container being scanned, which may have come from any of them.
 */
public final class Contents {

    private final LotRecords records;
    private final Map<TraceRef, List<Making>> from = new HashMap<>();
    private @Nullable Map<TraceRef, List<Making>> labelled;

    public Contents(LotRecords records) {
        this.records = records;
    }

    public void learn(Collection<TraceRef> sources) {
        List<TraceRef> missing = sources.stream()
                .filter(node -> !from.containsKey(node))
                .distinct()
                .toList();
        if (!missing.isEmpty()) {
            missing.forEach(node -> from.put(node, new ArrayList<>()));
            records.from(missing).forEach(this::keep);
        }
    }

    private void keep(Making making) {
        Stream.of(making.from(), making.lot() == null ? making.from() : TraceRef.lot(making.lot()))
                .distinct()
                .map(from::get)
                .filter(Objects::nonNull)
                .filter(known -> !known.contains(making))
                .forEach(known -> known.add(making));
    }

    /** The lot, and its content if it has containers. */
    public Stream<TraceRef> with(TraceRef lot) {
        return isInContainers(lot) ? Stream.of(lot, content(lot.id())) : Stream.of(lot);
    }

    public boolean isInContainers(TraceRef lot) {
        learn(List.of(lot));
        return from.getOrDefault(lot, List.of()).stream()
                        .anyMatch(making -> making.to().kind() == TraceKind.CONTAINER)
                || !labelled(lot).isEmpty();
    }

    // these are few, so that all of them are looked at together
    private List<Making> labelled(TraceRef lotOrContainer) {
        if (labelled == null) {
            labelled = new HashMap<>();
            for (Making making : records.labelled()) {
                labelled.computeIfAbsent(making.from(), any -> new ArrayList<>())
                        .add(making);
                labelled.computeIfAbsent(making.to(), any -> new ArrayList<>()).add(making);
            }
        }
        return labelled.getOrDefault(lotOrContainer, List.of());
    }

    private Stream<Edge> byLabel(Stream<TraceRef> lotsAndContainers) {
        return lotsAndContainers
                .flatMap(node -> labelled(node).stream())
                .distinct()
                .flatMap(this::edges);
    }

    /** What was made, filled or recovered from these lots, containers, contents and units. */
    public Stream<Edge> outOf(Collection<TraceRef> nodes) {
        List<TraceRef> sources = nodes.stream()
                .map(node -> node.kind() == TraceKind.LOT_CONTENT ? TraceRef.lot(node.id()) : node)
                .toList();
        learn(sources);
        // a component that was scanned by its container is found through the lot too
        return Stream.of(
                        byLabel(sources.stream()),
                        sources.stream()
                                .flatMap(node -> from.getOrDefault(node, List.of()).stream())
                                .flatMap(this::edges),
                        records
                                .into(nodes.stream()
                                        .filter(node -> node.kind() == TraceKind.CONTAINER)
                                        .toList())
                                .stream()
                                .flatMap(this::edges))
                .flatMap(Function.identity());
    }

    /** What these lots, containers and contents came from. */
    public Stream<Edge> into(Collection<TraceRef> nodes) {
        List<TraceRef> made = nodes.stream()
                .filter(node -> node.kind() == TraceKind.LOT || node.kind() == TraceKind.CONTAINER)
                .toList();
        List<TraceRef> ofContents = nodes.stream()
                .filter(node -> node.kind() == TraceKind.LOT_CONTENT)
                .map(node -> TraceRef.lot(node.id()))
                .toList();
        learn(ofContents);
        List<Making> makings = made.isEmpty() ? List.of() : records.into(made);
        learn(makings.stream().map(Making::from).toList());
        return Stream.of(
                        byLabel(Stream.concat(made.stream(), ofContents.stream())),
                        makings.stream().flatMap(this::edges),
                        ofContents.stream()
                                .flatMap(lot -> from.getOrDefault(lot, List.of()).stream())
                                .flatMap(this::edges))
                .flatMap(Function.identity());
    }

    private Stream<Edge> edges(Making making) {
        Reason reason = Reason.of(making.way(), making.entry()).with("at", making.at());
        Edge edge = Edge.atOnce(making.from(), making.to(), Certainty.CERTAIN, making.at(), reason);
        if (making.isByLabel()) {
            Edge filled =
                    Edge.during(making.from(), making.to(), Certainty.POSSIBLE, sinceEver(making), making.at(), reason);
            return Stream.of(filled, intoContent(making, sinceEver(making), reason));
        }
        if (making.to().kind() == TraceKind.CONTAINER) {
            return making.from().kind() == TraceKind.LOT
                    ? Stream.of(edge, intoContent(making, making.at(), reason))
                    : Stream.of(edge);
        }
        if (making.from().kind() == TraceKind.CONTAINER) {
            return making.lot() == null
                    ? Stream.of(edge)
                    : Stream.of(edge, from(TraceRef.lot(Objects.requireNonNull(making.lot())), edge));
        }
        return making.from().kind() == TraceKind.LOT && isInContainers(making.from())
                ? Stream.of(edge, from(content(making.from().id()), edge))
                : Stream.of(edge);
    }

    private static Edge from(TraceRef other, Edge edge) {
        return Edge.atOnce(other, edge.to(), edge.certainty(), edge.begin(), edge.reason());
    }

    private static Moment sinceEver(Making making) {
        return new Moment(Long.MIN_VALUE, making.at().late());
    }

    private static Edge intoContent(Making filling, Moment since, Reason reason) {
        return Edge.during(filling.to(), content(filling.from().id()), Certainty.POSSIBLE, since, Moment.NEVER, reason);
    }

    private static TraceRef content(long lot) {
        return new TraceRef(TraceKind.LOT_CONTENT, lot);
    }
}
