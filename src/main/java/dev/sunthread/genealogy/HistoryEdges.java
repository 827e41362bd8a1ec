package dev.sunthread.genealogy;

import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The one view of edges: derived from history as known at a cut-off, the same in both directions, never from state. */
final class HistoryEdges implements EdgeSource {

    private final UseEdges uses;
    private final InstallationHistory installations;

    HistoryEdges(JdbcClient jdbc, long cutoff) {
        Clocks clocks = new Clocks(jdbc, cutoff);
        this.uses = new UseEdges(new UseHistory(jdbc, cutoff), new PositionHistory(jdbc, cutoff, clocks), clocks);
        this.installations = new InstallationHistory(jdbc, cutoff, clocks);
    }

    @Override
    public Collection<Edge> outOf(Collection<TraceRef> nodes) {
        Set<Long> lots = ids(nodes, TraceKind.LOT);
        Set<Long> units = ids(nodes, TraceKind.UNIT);
        Stream<Edge> ofLots = lots.isEmpty()
                ? Stream.empty()
                : Stream.concat(uses.outOf(lots), installations.outOfLots(lots).stream());
        Stream<Edge> ofUnits = units.isEmpty() ? Stream.empty() : installations.outOfUnits(units).stream();
        return Stream.concat(
                        ofLots.filter(edge -> isOneOf(lots, TraceKind.LOT, edge.from())),
                        ofUnits.filter(edge -> isOneOf(units, TraceKind.UNIT, edge.from())))
                .toList();
    }

    @Override
    public Collection<Edge> into(Collection<TraceRef> nodes) {
        Set<Long> units = ids(nodes, TraceKind.UNIT);
        if (units.isEmpty()) {
            return Set.of();
        }
        return Stream.concat(uses.into(units), installations.intoUnits(units).stream())
                .filter(edge -> units.contains(edge.to().id()))
                .toList();
    }

    private static boolean isOneOf(Set<Long> asked, TraceKind kind, TraceRef node) {
        return node.kind() == kind && asked.contains(node.id());
    }

    private static Set<Long> ids(Collection<TraceRef> nodes, TraceKind kind) {
        return nodes.stream()
                .filter(node -> node.kind() == kind)
                .map(TraceRef::id)
                .collect(Collectors.toSet());
    }
}
