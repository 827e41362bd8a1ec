package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.reach.Acting;
import dev.sunthread.genealogy.reach.Reach;
import dev.sunthread.genealogy.reach.Readings;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.records.LotRecords;
import dev.sunthread.genealogy.records.LotSpan;
import dev.sunthread.genealogy.records.SignRecords;
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
import java.util.function.Function;
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
    private final Recoveries recoveries;
    private final Vacancies vacancies;

    public GapEdges(Gaps gaps, Reach reach, Signs signs, LotRecords lots, Readings readings, SignRecords records) {
        this.gaps = gaps;
        this.reach = reach;
        this.signs = signs;
        this.lots = lots;
        this.readings = readings;
        this.recoveries = new Recoveries(gaps, signs, records);
        this.vacancies = new Vacancies(reach);
    }

    /** Edges from these lots, contents, units and runs to the gaps that they may fill. */
    public Stream<Edge> outOfCandidates(Collection<TraceRef> nodes) {
        learn(nodes);
        return Stream.concat(
                nodes.stream().flatMap(node -> gaps.ofCandidate(node).stream().flatMap(gap -> into(gap, node))),
                recoveries.outOfUnits(nodes));
    }

    /** Edges out of these gaps, and out of what stands for children and parents that are not recorded. */
    public Stream<Acting> outOfGaps(Collection<TraceRef> nodes) {
        return Stream.of(
                        effects(gaps.whole(nodes).toList()),
                        vacancies.of(nodes).flatMap(vacancies::outOf),
                        recoveries.outOfNodes(nodes).map(Acting::only))
                .flatMap(Function.identity());
    }

    /** Edges into these gaps from their candidates. */
    public Stream<Edge> intoGaps(Collection<TraceRef> nodes) {
        return Stream.concat(
                gaps.whole(nodes).flatMap(gap -> gap.candidates().stream().map(one -> into(gap, one))),
                recoveries.intoNodes(nodes));
    }

    /** Edges from gaps into these units, which these happenings may have reached; companions lack what reaches them. */
    public Stream<Acting> intoUnits(
            Collection<TraceRef> units, Set<TraceRef> companions, Collection<Happening> reaching) {
        learn(companions);
        Set<Gap> lacking = gaps.of(companions, reaching);
        return Stream.of(
                        effects(lacking),
                        companions.stream()
                                .flatMap(unit -> lacking.stream().flatMap(gap -> gap.vacancies(unit).stream()))
                                .flatMap(vacancies::outOfAround),
                        companions.stream()
                                .flatMap(unit -> gaps.ofCandidate(unit).stream())
                                .distinct()
                                .flatMap(Gap::vacancies)
                                .flatMap(vacancy -> vacancies.outOfInside(vacancy, companions)))
                .flatMap(Function.identity());
    }

    public Stream<Edge> intoMade(Collection<TraceRef> lotsAndContainers) {
        return Stream.concat(
                effects(gaps.ofMade(lotsAndContainers)).map(Acting::edge), recoveries.intoMade(lotsAndContainers));
    }

    /** For what acted on parents: the same on the children that the parents lacked then. */
    public Stream<Edge> intoUnrecordedChildren(Collection<Acting> acting) {
        List<Acting> those = acting.stream()
                .filter(one -> one.inside() && one.edge().to().kind() == TraceKind.UNIT)
                .toList();
        Map<TraceRef, Set<Gap>> inside = gaps.insideOf(targets(those));
        return those.stream()
                .flatMap(one -> inside.getOrDefault(one.edge().to(), Set.of()).stream()
                        .flatMap(gap -> gap.vacancies(one.edge().to()).stream())
                        .flatMap(vacancy -> vacancies.intoInside(one, vacancy)));
    }

    /** For what acted on units whose parent is not recorded: the same on what may have been around them. */
    public Stream<Edge> aroundUnrecordedParents(Collection<Acting> acting) {
        List<Acting> those = acting.stream()
                .filter(one -> one.around() && one.edge().to().kind() == TraceKind.UNIT)
                .toList();
        learn(targets(those));
        return those.stream()
                .flatMap(one -> gaps.ofCandidate(one.edge().to()).stream()
                        .flatMap(gap -> gap.candidates(one.edge().to()).stream()
                                .flatMap(candidate -> gap.vacancies()
                                        .flatMap(vacancy -> vacancies.intoAround(one, candidate, vacancy)))));
    }

    private static Set<TraceRef> targets(Collection<Acting> acting) {
        return acting.stream().map(one -> one.edge().to()).collect(Collectors.toSet());
    }

    /** The units that may have been the unrecorded children which these nodes stand for. */
    public Set<TraceRef> childrenOf(Collection<TraceRef> arounds) {
        return vacancies
                .of(arounds)
                .flatMap(stretch -> stretch.vacancy().gap().candidates().stream())
                .map(Gap.Candidate::node)
                .filter(node -> node.kind() == TraceKind.UNIT)
                .collect(Collectors.toSet());
    }

    /** The parents that lack a child which these nodes stand for. */
    public Set<TraceRef> parentsOf(Collection<TraceRef> insides) {
        return vacancies.of(insides).map(stretch -> stretch.vacancy().parent()).collect(Collectors.toSet());
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
                .flatMap(gaps::withThoseAlong)
                .map(Happening::under)
                .filter(java.util.Objects::nonNull)
                .toList());
    }

    private Stream<Edge> into(Gap gap, TraceRef node) {
        return gap.candidates(node).stream().map(candidate -> into(gap, candidate));
    }

    private static Edge into(Gap gap, Gap.Candidate candidate) {
        Reason reason = Reason.of("candidate", 0).with("from", candidate.from()).with("to", candidate.to());
        return candidate.node().kind() == TraceKind.UNIT
                ? Edge.installed(
                        candidate.node(), gap.node(), Certainty.UNPROVEN, candidate.from(), candidate.to(), reason)
                : Edge.during(
                        candidate.node(), gap.node(), Certainty.UNPROVEN, candidate.from(), candidate.to(), reason);
    }

    private Stream<Acting> effects(Collection<Gap> those) {
        reach.learn(those.stream()
                .flatMap(gap -> gap.lacks().stream())
                .filter(lack -> !lack.isOfChild() && lack.made() == null)
                .map(Lack::where)
                .toList());
        return those.stream().flatMap(gap -> gap.lacks().stream().flatMap(lack -> effects(gap.node(), lack)));
    }

    private Stream<Acting> effects(TraceRef gap, Lack lack) {
        Moment begin = Moment.at(lack.window().early());
        Moment end = Moment.at(lack.window().late());
        Reason reason = reason(lack, begin, end);
        if (lack.isOfChild()) {
            Moment gone = Moment.at(Math.max(lack.until(), lack.window().late()));
            return Stream.of(Acting.only(Edge.installed(gap, lack.parent(), Certainty.UNPROVEN, begin, gone, reason)));
        }
        if (lack.made() != null) {
            return Stream.of(Acting.only(Edge.during(gap, lack.made(), Certainty.UNPROVEN, begin, end, reason)));
        }
        return reach.of(lack.where()).keySet().stream()
                .map(unit ->
                        reach.acting(lack.where(), Edge.during(gap, unit, Certainty.UNPROVEN, begin, end, reason)));
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
