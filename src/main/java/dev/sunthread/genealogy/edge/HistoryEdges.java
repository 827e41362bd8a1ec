package dev.sunthread.genealogy.edge;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.gap.Candidates;
import dev.sunthread.genealogy.gap.Childless;
import dev.sunthread.genealogy.gap.Definitions;
import dev.sunthread.genealogy.gap.GapEdges;
import dev.sunthread.genealogy.gap.Gaps;
import dev.sunthread.genealogy.gap.Lacks;
import dev.sunthread.genealogy.gap.Signs;
import dev.sunthread.genealogy.line.LineDoubts;
import dev.sunthread.genealogy.reach.Acting;
import dev.sunthread.genealogy.reach.Containment;
import dev.sunthread.genealogy.reach.Contents;
import dev.sunthread.genealogy.reach.MaterialEdges;
import dev.sunthread.genealogy.reach.Reach;
import dev.sunthread.genealogy.reach.Readings;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.records.Records;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.EdgeSource;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The one view of edges: concluded from history as known at a cut-off, the same in both directions, never from state.
 * Uses, runs and gaps reach inside; two bodies on one identity leave nothing certain there.
 */
public final class HistoryEdges implements EdgeSource {

    private final Records records;
    private final Containment containment;
    private final Readings readings;
    private final Contents contents;
    private final MaterialEdges material;
    private final RunEdges runs;
    private final GapEdges gaps;
    private final LineEdges lines;
    private final Set<Long> takenBack;

    public HistoryEdges(Records records) {
        this(records, false);
    }

    /** {@code wider} lets every happening reach inside, also where a route says that it acts on a unit alone. */
    public HistoryEdges(Records records, boolean wider) {
        this.records = records;
        this.containment = new Containment(records.placements(), records.signs(), records.lines());
        this.readings = new Readings(records, containment);
        this.contents = new Contents(records.lots());
        this.takenBack = LineDoubts.takenBack(records.lines().open());
        Signs signs = new Signs(records.signs());
        Definitions definitions = new Definitions(records.demands(), signs);
        Reach reach = new Reach(containment, wider ? any -> Map.of() : definitions::actAloneOn);
        this.material = new MaterialEdges(records, readings, reach, contents);
        this.runs = new RunEdges(readings, reach);
        Lacks lacks = new Lacks(records, readings, containment, reach, definitions, signs, material);
        Childless childless = new Childless(records.signs(), definitions, signs);
        Gaps known = new Gaps(
                records, definitions, lacks, new Candidates(records, readings, containment, contents), childless);
        this.gaps = new GapEdges(known, reach, signs, records.lots(), readings, records.signs());
        this.lines = new LineEdges(records, reach, contents);
    }

    @Override
    public Collection<Edge> outOf(Collection<TraceRef> nodes) {
        Set<TraceRef> asked = new HashSet<>(nodes);
        List<TraceRef> placeable = of(nodes, TraceKind.UNIT, TraceKind.LOT);
        containment.parents().learn(placeable);
        List<Acting> acting = Stream.of(
                        material.outOf(of(nodes, TraceKind.LOT, TraceKind.CONTAINER, TraceKind.LOT_CONTENT)),
                        runs.outOf(nodes),
                        gaps.outOfGaps(nodes),
                        lines.outOf(nodes))
                .flatMap(Function.identity())
                .filter(one -> asked.contains(one.edge().from()))
                .toList();
        Stream<Edge> others = Stream.of(
                        contents.outOf(made(nodes)),
                        placeable.stream().flatMap(node -> containment.parents().of(node).stream()),
                        gaps.outOfCandidates(nodes),
                        gaps.intoUnrecordedChildren(acting),
                        gaps.aroundUnrecordedParents(acting))
                .flatMap(Function.identity());
        return withoutFalseCertainty(
                Stream.concat(acting.stream().map(Acting::edge), others).filter(edge -> asked.contains(edge.from())));
    }

    @Override
    public Collection<Edge> into(Collection<TraceRef> nodes) {
        Set<TraceRef> asked = new HashSet<>(nodes);
        List<TraceRef> units = of(nodes, TraceKind.UNIT);
        Set<Long> lots = of(nodes, TraceKind.LOT).stream().map(TraceRef::id).collect(Collectors.toSet());
        containment.children().learn(units);
        Stream<Edge> edges = Stream.of(
                        actingOn(units).stream().map(Acting::edge),
                        units.stream().flatMap(unit -> containment.children().of(unit).stream()),
                        material.intoLots(lots),
                        gaps.intoMade(of(nodes, TraceKind.LOT, TraceKind.CONTAINER)),
                        contents.into(nodes),
                        gaps.intoGaps(of(nodes, TraceKind.GAP, TraceKind.RECOVERY_GAP)),
                        intoUnrecordedChildren(of(nodes, TraceKind.INSIDE_GAP)),
                        aroundUnrecordedParents(of(nodes, TraceKind.AROUND_GAP)),
                        lines.into(of(nodes, TraceKind.LOT, TraceKind.CONTAINER))
                                .map(Acting::edge))
                .flatMap(Function.identity());
        return withoutFalseCertainty(edges.filter(edge -> asked.contains(edge.to())));
    }

    private List<Acting> actingOn(Collection<TraceRef> units) {
        if (units.isEmpty()) {
            return List.of();
        }
        Set<Happening> reaching = readings.thatMayReach(units);
        return Stream.of(
                        material.ofUsesIn(reaching),
                        runs.of(reaching),
                        gaps.intoUnits(units, containment.companions(units), reaching),
                        lines.into(units))
                .flatMap(Function.identity())
                .toList();
    }

    private Stream<Edge> intoUnrecordedChildren(List<TraceRef> insides) {
        Set<TraceRef> parents = insides.isEmpty() ? Set.of() : gaps.parentsOf(insides);
        List<Acting> acting = actingOn(parents).stream()
                .filter(one -> parents.contains(one.edge().to()))
                .toList();
        return gaps.intoUnrecordedChildren(acting);
    }

    private Stream<Edge> aroundUnrecordedParents(List<TraceRef> arounds) {
        Set<TraceRef> children = arounds.isEmpty() ? Set.of() : gaps.childrenOf(arounds);
        List<Acting> acting = actingOn(children).stream()
                .filter(one -> children.contains(one.edge().to()))
                .toList();
        return gaps.aroundUnrecordedParents(acting);
    }

    private Collection<Edge> withoutFalseCertainty(Stream<Edge> edges) {
        // of edges that are alike a walk takes the first: always the same one
        List<Edge> all = edges.distinct().sorted(Edge.ORDER).toList();
        Set<Long> twice = records.signs()
                .bornAgain(all.stream()
                        .flatMap(edge -> Stream.of(edge.from(), edge.to()))
                        .filter(node -> node.kind() == TraceKind.UNIT)
                        .map(TraceRef::id)
                        .collect(Collectors.toSet()));
        return all.stream()
                .map(edge -> isOfOneOf(twice, edge)
                                || takenBack.contains(edge.reason().entry())
                        ? edge.atMost(Certainty.POSSIBLE)
                        : edge)
                .toList();
    }

    private static boolean isOfOneOf(Set<Long> twice, Edge edge) {
        return Stream.of(edge.from(), edge.to())
                .anyMatch(node -> node.kind() == TraceKind.UNIT && twice.contains(node.id()));
    }

    private static List<TraceRef> made(Collection<TraceRef> nodes) {
        return of(nodes, TraceKind.LOT, TraceKind.CONTAINER, TraceKind.LOT_CONTENT, TraceKind.UNIT);
    }

    private static List<TraceRef> of(Collection<TraceRef> nodes, TraceKind... kinds) {
        Set<TraceKind> wanted = Set.of(kinds);
        return nodes.stream().filter(node -> wanted.contains(node.kind())).toList();
    }
}
