package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.reach.Reach;
import dev.sunthread.genealogy.reach.Readings;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.records.LotRecords;
import dev.sunthread.genealogy.records.LotSpan;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.genealogy.walk.Reason;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Edges from candidates to gaps and from gaps to what lacks a record, all unproven. What acted on a parent while a
 * child of it is not recorded may have reached any candidate.
 */
public final class GapEdges {

    private final Gaps gaps;
    private final Reach reach;
    private final Signs signs;
    private final LotRecords lots;
    private final Readings readings;

    public GapEdges(Gaps gaps, Reach reach, Signs signs, LotRecords lots, Readings readings) {
        this.gaps = gaps;
        this.reach = reach;
        this.signs = signs;
        this.lots = lots;
        this.readings = readings;
    }

    /** Edges from these lots, contents, units and runs to the gaps that they may fill. */
    public Stream<Edge> outOfCandidates(Collection<TraceRef> nodes) {
        learn(nodes);
        return nodes.stream().flatMap(node -> gaps.ofCandidate(node).stream().flatMap(gap -> into(gap, node)));
    }

    /** Edges out of these gaps. */
    public Stream<Edge> outOfGaps(Collection<TraceRef> nodes) {
        List<Gap> whole = gaps.whole(nodes).toList();
        return Stream.concat(effects(whole), inside(whole));
    }

    /** Edges into these gaps from their candidates. */
    public Stream<Edge> intoGaps(Collection<TraceRef> nodes) {
        return gaps.whole(nodes).flatMap(gap -> gap.candidates().stream().map(one -> into(gap, one)));
    }

    /** Edges from gaps into these units, which these happenings may have reached; companions lack what reaches them. */
    public Stream<Edge> intoUnits(
            Collection<TraceRef> units, Collection<TraceRef> companions, Collection<Happening> reaching) {
        learn(companions);
        return Stream.concat(
                effects(gaps.of(companions, reaching)),
                inside(companions.stream()
                        .flatMap(unit -> gaps.ofCandidate(unit).stream())
                        .collect(Collectors.toSet())));
    }

    public Stream<Edge> intoMade(Collection<TraceRef> lotsAndContainers) {
        return effects(gaps.ofMade(lotsAndContainers));
    }

    /** For edges of what acted on parents: the same into the children that the parents lacked then. */
    public Stream<Edge> intoUnrecordedChildren(Collection<Edge> acting) {
        Set<TraceRef> parents = acting.stream()
                .map(Edge::to)
                .filter(node -> node.kind() == TraceKind.UNIT)
                .collect(Collectors.toSet());
        Map<TraceRef, Set<Gap>> inside = gaps.insideOf(parents);
        return acting.stream()
                .flatMap(edge -> inside.getOrDefault(edge.to(), Set.of()).stream()
                        .filter(gap -> actedInside(edge, gap))
                        .map(gap -> unproven(edge, gap.inside())));
    }

    /** For edges of what acted on units whose parent is not recorded: the same on what may have been around them. */
    public Stream<Edge> aroundUnrecordedParents(Collection<Edge> acting) {
        List<TraceRef> units = acting.stream()
                .map(Edge::to)
                .filter(node -> node.kind() == TraceKind.UNIT)
                .distinct()
                .toList();
        learn(units);
        return acting.stream()
                .filter(edge -> edge.to().kind() == TraceKind.UNIT && !isOnlyPlaced(edge))
                .flatMap(edge -> gaps.ofCandidate(edge.to()).stream()
                        .filter(gap -> actedWhileLacking(edge, gap))
                        .map(gap -> unproven(edge, gap.around())));
    }

    /** The units that may have been the unrecorded children which these nodes stand for. */
    public Set<TraceRef> childrenOf(Collection<TraceRef> arounds) {
        return gaps.whole(arounds)
                .flatMap(gap -> gap.candidates().stream())
                .map(Gap.Candidate::node)
                .filter(node -> node.kind() == TraceKind.UNIT)
                .collect(Collectors.toSet());
    }

    private static boolean actedWhileLacking(Edge edge, Gap gap) {
        return gap.lacks().stream().anyMatch(lack -> lack.isOfChildThere(edge));
    }

    private static Edge unproven(Edge edge, TraceRef to) {
        return new Edge(
                edge.from(), to, Certainty.UNPROVEN, edge.begin(), edge.lastCrossing(), edge.stayEnd(), edge.reason());
    }

    private static boolean isOnlyPlaced(Edge edge) {
        return edge.from().kind() == TraceKind.GAP && edge.reason().named().containsKey("position");
    }

    /** The parents that lack a child which these nodes stand for. */
    public Set<TraceRef> parentsOf(Collection<TraceRef> insides) {
        return gaps.whole(insides)
                .flatMap(gap -> gap.lacks().stream())
                .filter(Lack::isOfChild)
                .map(Lack::parent)
                .collect(Collectors.toSet());
    }

    private static boolean actedInside(Edge edge, Gap gap) {
        return !isOnlyPlaced(edge) && gap.lacks(edge.to()).stream().anyMatch(lack -> lack.isOfChildThere(edge));
    }

    private void learn(Collection<TraceRef> nodes) {
        List<Long> ofLots = nodes.stream()
                .filter(node -> node.kind() == TraceKind.LOT || node.kind() == TraceKind.LOT_CONTENT)
                .map(TraceRef::id)
                .distinct()
                .toList();
        List<TraceRef> units =
                nodes.stream().filter(node -> node.kind() == TraceKind.UNIT).toList();
        signs.learn(units);
        List<Long> items = new ArrayList<>(
                units.stream().map(unit -> signs.of(unit).item()).toList());
        for (LotSpan span : ofLots.isEmpty() ? List.<LotSpan>of() : lots.spansOf(ofLots)) {
            if (ofLots.contains(span.lot()) && span.item() == null) {
                gaps.learnEveryItem();
            } else if (ofLots.contains(span.lot())) {
                items.add(span.item());
            }
        }
        gaps.learnItems(items);
        List<TraceRef> runs = nodes.stream()
                .filter(node -> node.kind() == TraceKind.CURE_RUN || node.kind() == TraceKind.TEST_RUN)
                .toList();
        gaps.learnRuns(readings.of(runs).stream()
                .map(Happening::under)
                .filter(java.util.Objects::nonNull)
                .toList());
    }

    private Stream<Edge> into(Gap gap, TraceRef node) {
        return gap.candidates(node).stream().map(candidate -> into(gap, candidate));
    }

    private static Edge into(Gap gap, Gap.Candidate candidate) {
        Reason reason = Reason.of("candidate", 0).with("from", candidate.from()).with("to", candidate.to());
        return Edge.during(candidate.node(), gap.node(), Certainty.UNPROVEN, candidate.from(), candidate.to(), reason);
    }

    // whatever is inside a candidate is acted on with it
    private Stream<Edge> inside(Collection<Gap> those) {
        List<Gap> ofChildren = those.stream().filter(Gap::isOfChild).toList();
        reach.learnInside(ofChildren.stream().flatMap(GapEdges::units).toList());
        return ofChildren.stream().flatMap(this::inside);
    }

    private Stream<Edge> inside(Gap gap) {
        return gap.candidates().stream()
                .filter(candidate -> candidate.node().kind() == TraceKind.UNIT)
                .flatMap(candidate -> reach.everInside(candidate.node()).stream()
                        .map(unit -> Edge.during(
                                gap.inside(),
                                unit,
                                Certainty.UNPROVEN,
                                candidate.from(),
                                candidate.to(),
                                Reason.of("may-have-been-inside", 0))));
    }

    private static Stream<TraceRef> units(Gap gap) {
        return gap.candidates().stream().map(Gap.Candidate::node).filter(node -> node.kind() == TraceKind.UNIT);
    }

    private Stream<Edge> effects(Collection<Gap> those) {
        reach.learn(those.stream()
                .flatMap(gap -> gap.lacks().stream().flatMap(lack -> acting(gap, lack)))
                .toList());
        return those.stream()
                .flatMap(gap -> gap.lacks().stream()
                        .flatMap(lack -> Stream.concat(effects(gap.node(), lack), around(gap, lack))));
    }

    private static Stream<Happening> acting(Gap gap, Lack lack) {
        if (lack.isOfChild()) {
            return units(gap).findAny().stream().map(any -> meanwhile(lack));
        }
        return lack.made() == null ? Stream.of(lack.where()) : Stream.empty();
    }

    // nothing acts on a part of a lot that is in a position
    private Stream<Edge> around(Gap gap, Lack lack) {
        if (!lack.isOfChild()) {
            return Stream.empty();
        }
        return acting(gap, lack)
                .flatMap(meanwhile -> reach.of(meanwhile).keySet().stream()
                        .map(unit -> Edge.during(
                                gap.around(),
                                unit,
                                Certainty.UNPROVEN,
                                meanwhile.start(),
                                meanwhile.end(),
                                Reason.of("may-have-been-around", 0))));
    }

    private static Happening meanwhile(Lack lack) {
        Moment begin = Moment.at(lack.window().early());
        Moment gone = Moment.at(Math.max(lack.until(), lack.window().late()));
        return new Happening(
                lack.parent(), lack.where().entry(), begin, gone, Set.of(lack.parent()), Set.of(), null, null);
    }

    private Stream<Edge> effects(TraceRef gap, Lack lack) {
        Moment begin = Moment.at(lack.window().early());
        Moment end = Moment.at(lack.window().late());
        Reason reason = reason(lack, begin, end);
        if (lack.isOfChild()) {
            Moment gone = Moment.at(Math.max(lack.until(), lack.window().late()));
            return Stream.of(Edge.installed(gap, lack.parent(), Certainty.UNPROVEN, begin, gone, reason));
        }
        if (lack.made() != null) {
            return Stream.of(Edge.during(gap, lack.made(), Certainty.UNPROVEN, begin, end, reason));
        }
        return reach.of(lack.where()).keySet().stream()
                .map(unit -> Edge.during(gap, unit, Certainty.UNPROVEN, begin, end, reason));
    }

    private static Reason reason(Lack lack, Moment begin, Moment end) {
        Reason reason = Reason.of("not-recorded", lack.where().entry())
                .with("from", begin)
                .with("to", end);
        String operation = lack.where().operation();
        reason = operation == null ? reason : reason.with("operation", operation);
        return lack.position() == null ? reason : reason.with("position", lack.position());
    }
}
