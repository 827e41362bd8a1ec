package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.demand.RunDemand;
import dev.sunthread.genealogy.reach.Containment;
import dev.sunthread.genealogy.reach.Contents;
import dev.sunthread.genealogy.reach.Readings;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.records.LotSpan;
import dev.sunthread.genealogy.records.Records;
import dev.sunthread.genealogy.records.UnitSigns;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What may fill a lack: every lot of the items, or of a component of their formulas, from its first sign in the plant to
 * its recorded end, or as long as some of it may be left at a position, every unit of them whose place then is
 * unrecorded, every run under the definition. First in first out, expiry and hold exclude none.
 */
public final class Candidates {

    private final Records records;
    private final Containment containment;
    private final Contents contents;
    private final Map<Set<Long>, List<LotSpan>> lots = new HashMap<>();
    private final Map<Set<Long>, Set<Long>> components = new HashMap<>();
    private final Map<Set<RunDemand>, List<Happening>> runs = new HashMap<>();
    private final Map<Happening, List<Happening>> along = new HashMap<>();
    private final Set<Long> twice = new HashSet<>();
    private final Trays trays;

    public Candidates(Records records, Readings readings, Containment containment, Contents contents) {
        this.trays = new Trays(readings, containment, records.placements());
        this.records = records;
        this.containment = containment;
        this.contents = contents;
    }

    /** The candidates of each of these lacks, in their order. */
    public List<List<Gap.Candidate>> of(List<Lack> lacks) {
        Map<Set<Long>, List<UnitSigns>> units = free(lacks);
        return lacks.stream()
                .map(lack -> Stream.of(lots(lack), runs(lack), free(units.getOrDefault(lack.items(), List.of()), lack))
                        .flatMap(all -> all)
                        .toList())
                .toList();
    }

    private Stream<Gap.Candidate> lots(Lack lack) {
        if (lack.items().isEmpty()) {
            return Stream.empty();
        }
        List<LotSpan> spans = lots.computeIfAbsent(lack.items(), this::spans);
        List<LotSpan> components = lots.computeIfAbsent(componentsOf(lack.items()), this::spans);
        Map<Long, LotSpan> there = new HashMap<>();
        Stream.concat(
                        spans.stream().filter(span -> span.mayBeThere(lack.ofLots())),
                        components.stream()
                                .filter(span -> span.from() <= lack.ofLots().late()))
                .filter(span -> !TraceRef.lot(span.lot()).equals(lack.made()))
                .forEach(span -> there.merge(span.lot(), span, Candidates::longer));
        contents.learn(there.keySet().stream().map(TraceRef::lot).toList());
        return there.values().stream()
                .flatMap(span -> contents.with(TraceRef.lot(span.lot()))
                        .map(node -> new Gap.Candidate(node, Moment.at(span.from()), Moment.at(span.to()))));
    }

    // a lot may have been mixed of them that nothing tells of, and may have been kept when nothing of them was left
    private Set<Long> componentsOf(Set<Long> items) {
        return components.computeIfAbsent(items, records.demands()::allComponentsOf);
    }

    private List<LotSpan> spans(Set<Long> items) {
        if (items.isEmpty()) {
            return List.of();
        }
        List<LotSpan> spans = records.lots().spansOfItems(items).stream()
                .filter(span -> span.item() == null || items.contains(span.item()))
                .toList();
        Map<TraceRef, Long> left = leftBehind(spans.stream()
                .filter(span -> span.to() != Long.MAX_VALUE)
                .map(LotSpan::lot)
                .collect(Collectors.toSet()));
        return spans.stream()
                .map(span -> new LotSpan(
                        span.lot(),
                        span.item(),
                        span.from(),
                        Math.max(span.to(), left.getOrDefault(TraceRef.lot(span.lot()), Long.MIN_VALUE))))
                .toList();
    }

    /** Until when something of these lots may be left at a position, though nothing of them is in stock. */
    private Map<TraceRef, Long> leftBehind(Set<Long> ended) {
        Map<TraceRef, Long> left = new HashMap<>();
        if (!ended.isEmpty()) {
            records.uses().positionsThatHeld(ended).stream()
                    .map(records.uses()::timeline)
                    .forEach(timeline -> timeline.ends().forEach((lot, end) -> left.merge(lot, end, Math::max)));
        }
        return left;
    }

    private static LotSpan longer(LotSpan one, LotSpan other) {
        return new LotSpan(one.lot(), one.item(), Math.min(one.from(), other.from()), Math.max(one.to(), other.to()));
    }

    private Stream<Gap.Candidate> runs(Lack lack) {
        if (lack.runs().isEmpty()) {
            return Stream.empty();
        }
        Moment window = lack.present();
        Stream<Happening> demanded = runs.computeIfAbsent(lack.runs(), records.happenings()::under).stream()
                .filter(run -> lack.runs().contains(run.under()))
                .filter(run -> run.at().early() <= window.late()
                        && window.early() <= run.at().late());
        return (lack.isOfTray() ? demanded.flatMap(run -> alongWith(run)) : demanded)
                .map(run -> new Gap.Candidate(run.node(), run.start(), run.end()))
                .distinct();
    }

    /** The other runs that may have been done on the same carrier, with what was on it. */
    Stream<Happening> alongWith(Happening run) {
        return along.computeIfAbsent(run, one -> trays.alongWith(one).toList()).stream();
    }

    private Map<Set<Long>, List<UnitSigns>> free(List<Lack> lacks) {
        Map<Set<Long>, Moment> windows = new HashMap<>();
        lacks.stream()
                .filter(lack -> !lack.items().isEmpty())
                .forEach(lack -> windows.merge(lack.items(), lack.present(), Candidates::around));
        Map<Set<Long>, List<UnitSigns>> free = new HashMap<>();
        windows.forEach((items, window) -> free.put(
                items,
                records.signs().thatMayHaveBeenFree(items, window).stream()
                        .filter(unit -> items.contains(unit.item()))
                        .toList()));
        Collection<UnitSigns> all = free.values().stream().flatMap(List::stream).toList();
        containment.parents().learn(all.stream().map(UnitSigns::node).toList());
        twice.addAll(records.signs().bornAgain(all.stream().map(UnitSigns::unit).collect(Collectors.toSet())));
        return free;
    }

    private Stream<Gap.Candidate> free(List<UnitSigns> units, Lack lack) {
        return units.stream()
                .filter(unit -> !lack.where().units().contains(unit.node()) && mayBeFree(unit, lack.present()))
                .map(unit -> candidate(unit, lack.present()));
    }

    // it came after it surely was elsewhere, or taken out, and was gone before it surely is again
    private Gap.Candidate candidate(UnitSigns unit, Moment window) {
        long from = unit.first();
        long to = Long.MAX_VALUE;
        for (Edge stay : twice.contains(unit.unit())
                ? List.<Edge>of()
                : containment.parents().of(unit.node())) {
            boolean wasTakenOut = stay.reason().key().equals(Edge.REMOVED);
            boolean wasThere = wasTakenOut
                    || stay.certainty() == Certainty.CERTAIN
                            && stay.begin().late() < stay.stayEnd().early();
            long gone = wasTakenOut ? stay.stayEnd().late() : stay.begin().late();
            if (wasThere && stay.stayEnd().late() <= window.early()) {
                from = Math.max(from, stay.stayEnd().early());
            } else if (wasThere && (wasTakenOut ? stay.stayEnd().early() : gone) > window.late()) {
                to = Math.min(to, gone);
            }
        }
        return new Gap.Candidate(unit.node(), Moment.at(from), Moment.at(to));
    }

    private boolean mayBeFree(UnitSigns unit, Moment window) {
        boolean placed = containment.parents().of(unit.node()).stream()
                .anyMatch(stay -> stay.certainty() == Certainty.CERTAIN
                        && stay.begin().late() <= window.early()
                        && stay.stayEnd().early() > window.late());
        boolean scrapped = unit.scrapped().stream().anyMatch(scrap -> scrap.late() < window.early());
        return unit.first() <= window.late()
                && (!placed || twice.contains(unit.unit()))
                && !scrapped
                && !isAway(unit, window);
    }

    private static boolean isAway(UnitSigns unit, Moment window) {
        return unit.shipped().stream()
                .filter(shipped -> shipped.late() < window.early())
                .anyMatch(shipped -> unit.returned().stream()
                        .noneMatch(back -> back.late() >= shipped.early() && back.early() <= window.late()));
    }

    private static Moment around(Moment one, Moment other) {
        return new Moment(Math.min(one.early(), other.early()), Math.max(one.late(), other.late()));
    }
}
