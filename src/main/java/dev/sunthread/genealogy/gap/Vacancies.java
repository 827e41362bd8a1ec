package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.gap.Vacancy.Stretch;
import dev.sunthread.genealogy.reach.Acting;
import dev.sunthread.genealogy.reach.Reach;
import dev.sunthread.genealogy.records.Happening;
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
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Edges by which what acts on a parent acts on a child that no record puts there, and the other way round. Such a thing
 * acts up to the outermost parent and from there on all inside, at one instant: so it never goes up again from what it
 * came down to, and a position through which it came up holds nothing else then.
 */
final class Vacancies {

    private final Reach reach;
    private final Map<Vacancy, List<Stretch>> around = new HashMap<>();
    private final Map<Vacancy, List<Stretch>> inside = new HashMap<>();
    private final Map<TraceRef, Stretch> known = new HashMap<>();

    Vacancies(Reach reach) {
        this.reach = reach;
    }

    /** The stretches with these nodes, as far as they are known. */
    Stream<Stretch> of(Collection<TraceRef> nodes) {
        return nodes.stream().filter(known::containsKey).map(known::get);
    }

    /** On what acts whatever acts through these: the parent and what is around and inside it then. */
    Stream<Acting> outOfAround(Vacancy vacancy) {
        return around(vacancy).stream().flatMap(this::outOf);
    }

    /** On what acts whatever acts on the parent: those candidates that are among these units, and what is inside them. */
    Stream<Acting> outOfInside(Vacancy vacancy, Set<TraceRef> units) {
        return inside(vacancy).stream()
                .flatMap(stretch -> candidates(vacancy)
                        .filter(candidate -> units.contains(candidate.node()))
                        .flatMap(candidate -> insideOf(candidate, stretch)));
    }

    Stream<Acting> outOf(Stretch stretch) {
        if (stretch.kind() == TraceKind.INSIDE_GAP) {
            return candidates(stretch.vacancy()).flatMap(candidate -> insideOf(candidate, stretch));
        }
        Happening acting = stretch.vacancy().acting(stretch.time());
        return reach.of(acting).keySet().stream()
                .map(unit -> reach.acting(acting, edge(stretch, unit, stretch.time(), "may-have-been-around")));
    }

    private Stream<Acting> insideOf(Gap.Candidate candidate, Stretch stretch) {
        if (!candidate.time().overlaps(stretch.time())) {
            return Stream.empty();
        }
        Moment then = candidate.time().within(stretch.time());
        return reach.inside(candidate.node(), then).stream()
                .map(unit -> new Acting(edge(stretch, unit, then, "may-have-been-inside"), false, true));
    }

    private static Edge edge(Stretch from, TraceRef to, Moment time, String reason) {
        Moment begin = Moment.at(time.early());
        Moment end = Moment.at(time.late());
        return Edge.during(from.node(), to, Certainty.UNPROVEN, begin, end, Reason.of(reason, 0));
    }

    /** What acts on a parent, on what may have been in the vacancy. */
    Stream<Edge> intoInside(Acting acting, Vacancy vacancy) {
        Stretch through = known.get(acting.edge().from());
        return through != null && isSamePlace(through.vacancy(), vacancy)
                ? Stream.empty()
                : inside(vacancy).stream().flatMap(stretch -> into(acting.edge(), stretch, stretch.time()));
    }

    private static boolean isSamePlace(Vacancy one, Vacancy other) {
        return one.parent().equals(other.parent()) && one.position().equals(other.position());
    }

    /** What acts on a candidate, on what it may have been in. */
    Stream<Edge> intoAround(Acting acting, Gap.Candidate candidate, Vacancy vacancy) {
        return around(vacancy).stream()
                .filter(stretch -> stretch.time().overlaps(candidate.time()))
                .flatMap(stretch -> into(acting.edge(), stretch, stretch.time().within(candidate.time())));
    }

    private static Stream<Edge> into(Edge acting, Stretch stretch, Moment time) {
        Moment whole = new Moment(
                acting.begin().early(),
                Math.max(acting.begin().early(), acting.lastCrossing().late()));
        return whole.overlaps(time) ? Stream.of(during(acting, stretch.node(), time)) : Stream.empty();
    }

    private static Edge during(Edge acting, TraceRef to, Moment time) {
        Moment begin = acting.begin().orLater(Moment.at(time.early()));
        long last = Math.min(acting.lastCrossing().late(), time.late());
        return new Edge(
                acting.from(),
                to,
                Certainty.UNPROVEN,
                begin,
                new Moment(Math.min(acting.lastCrossing().early(), last), last),
                acting.stayEnd(),
                acting.reason());
    }

    private List<Stretch> around(Vacancy vacancy) {
        return stretches(around, vacancy, TraceKind.AROUND_GAP, this::changesAround);
    }

    private List<Stretch> inside(Vacancy vacancy) {
        return stretches(inside, vacancy, TraceKind.INSIDE_GAP, this::changesInside);
    }

    private List<Stretch> stretches(
            Map<Vacancy, List<Stretch>> by,
            Vacancy vacancy,
            TraceKind kind,
            Function<Vacancy, Collection<Long>> changes) {
        List<Stretch> stretches = by.get(vacancy);
        if (stretches == null) {
            stretches = vacancy.stretches(kind, changes.apply(vacancy));
            stretches.forEach(stretch -> known.put(stretch.node(), stretch));
            by.put(vacancy, stretches);
        }
        return stretches;
    }

    private Collection<Long> changesAround(Vacancy vacancy) {
        return candidates(vacancy).findAny().isEmpty()
                ? List.of()
                : reach.changes(reach.of(vacancy.acting(vacancy.time())).keySet());
    }

    private Collection<Long> changesInside(Vacancy vacancy) {
        List<Long> changes = new ArrayList<>();
        candidates(vacancy).forEach(candidate -> {
            changes.add(candidate.time().early());
            changes.add(
                    candidate.time().late() == Long.MAX_VALUE
                            ? Long.MAX_VALUE
                            : candidate.time().late() + 1);
            changes.addAll(reach.changes(reach.everInside(candidate.node())));
        });
        return changes;
    }

    private static Stream<Gap.Candidate> candidates(Vacancy vacancy) {
        return vacancy.gap().candidates().stream()
                .filter(candidate -> candidate.node().kind() == TraceKind.UNIT);
    }
}
