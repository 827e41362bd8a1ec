package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.demand.Deviation;
import dev.sunthread.genealogy.demand.InForce;
import dev.sunthread.genealogy.demand.StructureRevision;
import dev.sunthread.genealogy.line.LineDoubts;
import dev.sunthread.genealogy.reach.Containment;
import dev.sunthread.genealogy.reach.MaterialEdges;
import dev.sunthread.genealogy.reach.Reach;
import dev.sunthread.genealogy.reach.Readings;
import dev.sunthread.genealogy.records.Blending;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.records.OpenLine;
import dev.sunthread.genealogy.records.RecordedUse;
import dev.sunthread.genealogy.records.Records;
import dev.sunthread.genealogy.records.Unfilled;
import dev.sunthread.genealogy.records.UnitSigns;
import dev.sunthread.genealogy.records.Unmade;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds what is demanded and not recorded: of units, of uses whose lot nothing tells, and of blends. */
public final class Lacks {

    private final Records records;
    private final Readings readings;
    private final Containment containment;
    private final Reach reach;
    private final Definitions definitions;
    private final Signs signs;
    private final UseLacks uses;
    private final LineLacks lines;
    private final Set<Long> takenBack;
    private final Map<TraceRef, List<OpenLine>> keptOf;
    private final Map<TraceRef, List<Lack>> known = new HashMap<>();

    public Lacks(
            Records records,
            Readings readings,
            Containment containment,
            Reach reach,
            Definitions definitions,
            Signs signs,
            MaterialEdges material) {
        this.records = records;
        this.readings = readings;
        this.containment = containment;
        this.reach = reach;
        this.definitions = definitions;
        this.signs = signs;
        this.takenBack = LineDoubts.takenBack(records.lines().open());
        this.keptOf = LineDoubts.goingOn(records.lines().open());
        this.uses = new UseLacks(records.uses(), readings, material);
        this.lines = new LineLacks(records);
    }

    /** What these units lack. */
    public List<Lack> of(Collection<TraceRef> units) {
        List<TraceRef> missing = units.stream()
                .filter(unit -> !known.containsKey(unit))
                .distinct()
                .toList();
        missing.forEach(unit -> known.put(unit, List.of()));
        signs.learn(missing);
        definitions.learn(missing.stream().map(unit -> signs.of(unit).item()).collect(Collectors.toSet()));
        learn(missing.stream().filter(this::isDemanded).toList());
        return units.stream()
                .distinct()
                .flatMap(unit -> known.getOrDefault(unit, List.of()).stream())
                .toList();
    }

    /** Uses in these happenings of which no record tells what was loaded. */
    public List<Lack> inUsesOf(Collection<Happening> happenings) {
        return uses.of(readings.usesIn(happenings));
    }

    /** Uses of these items in the whole plant of which no record tells what was loaded. */
    public List<Lack> inUsesOfItems(Collection<Long> items) {
        return uses.ofItems(items);
    }

    /** What kept lines tell, or may tell, to have been used or made, where nothing that could be read tells of what. */
    public List<Lack> inKeptLines() {
        return lines.all();
    }

    /** What lots lack as which positions were unloaded. */
    public List<Lack> ofUnloadings(Collection<Long> lots) {
        return uses.ofUnloadings(lots);
    }

    public List<Lack> ofBlends(Collection<Blending> blends) {
        Map<Long, List<Deviation>> excused =
                records
                        .demands()
                        .deviations(blends.stream()
                                .map(blend -> TraceRef.lot(blend.lot()))
                                .toList())
                        .stream()
                        .collect(Collectors.groupingBy(
                                deviation -> deviation.node().id()));
        definitions.learn(blends.stream().map(Blending::item).toList());
        return blends.stream()
                .flatMap(blend -> components(blend, excused.getOrDefault(blend.lot(), List.of())))
                .toList();
    }

    /** What a container may be filled with if no record tells. */
    static Lack ofUnfilled(Unfilled one, Set<Long> items) {
        Moment before = new Moment(Long.MIN_VALUE, one.last().late());
        return Lack.ofComponent(items, making(TraceRef.container(one.container()), 0, before));
    }

    /** What a lot of which no record tells where it came from may be, or may be made of. */
    static Lack ofUnmade(Unmade lot, Set<Long> items) {
        Moment before = new Moment(Long.MIN_VALUE, lot.first().late());
        return Lack.ofComponent(items, making(TraceRef.lot(lot.lot()), 0, before));
    }

    private boolean isDemanded(TraceRef unit) {
        long item = signs.of(unit).item();
        return !definitions.routes(item).isEmpty()
                || !definitions.structures(item).isEmpty();
    }

    // only a cure may have reached a unit that it did not name, and finding those means reading all around it
    private void learn(List<TraceRef> units) {
        if (units.isEmpty()) {
            return;
        }
        Map<TraceRef, List<Deviation>> deviations =
                records.demands().deviations(units).stream().collect(Collectors.groupingBy(Deviation::node));
        signs.learn(containment.everAround(units));
        containment.children().learn(units);
        Set<Happening> naming = readings.naming(units);
        containment.bornAgain(
                naming.stream().flatMap(one -> one.units().stream()).collect(Collectors.toSet()));
        conclude(units, given(naming, this::named), deviations);
        List<TraceRef> uncured = units.stream().filter(this::lacksACure).toList();
        Set<Happening> reaching = uncured.isEmpty() ? Set.of() : readings.thatMayReach(uncured);
        reach.learn(reaching);
        conclude(uncured, given(reaching, reach::of), deviations);
    }

    private Map<TraceRef, Certainty> named(Happening happening) {
        Set<TraceRef> twice = containment.bornAgain(happening.units());
        return happening.units().stream()
                .collect(Collectors.toMap(
                        unit -> unit, unit -> twice.contains(unit) ? Certainty.POSSIBLE : Certainty.CERTAIN));
    }

    private boolean lacksACure(TraceRef unit) {
        return known.getOrDefault(unit, List.of()).stream()
                .flatMap(lack -> lack.runs().stream())
                .anyMatch(run -> run.run() == TraceKind.CURE_RUN);
    }

    private Map<TraceRef, List<Given>> given(
            Set<Happening> happenings, Function<Happening, Map<TraceRef, Certainty>> reached) {
        Map<TraceRef, Set<Long>> items = readings.usesIn(happenings).stream()
                .filter(use -> use.item() != null)
                .collect(Collectors.groupingBy(
                        RecordedUse::step,
                        Collectors.mapping(use -> Objects.requireNonNull(use.item()), Collectors.toSet())));
        Map<TraceRef, List<Given>> given = new HashMap<>();
        for (Happening happening : happenings) {
            boolean isDoubted = takenBack.contains(happening.entry());
            Set<Long> took = isDoubted ? Set.of() : items.getOrDefault(happening.node(), Set.of());
            reached.apply(happening)
                    .forEach((unit, certainty) -> given.computeIfAbsent(unit, any -> new ArrayList<>())
                            .add(new Given(happening, isDoubted ? Certainty.POSSIBLE : certainty, took)));
        }
        return given;
    }

    private void conclude(
            List<TraceRef> units, Map<TraceRef, List<Given>> given, Map<TraceRef, List<Deviation>> deviations) {
        units.forEach(unit -> known.put(
                unit, lacks(unit, given.getOrDefault(unit, List.of()), deviations.getOrDefault(unit, List.of()))));
    }

    private List<Lack> lacks(TraceRef unit, List<Given> given, List<Deviation> deviations) {
        UnitSigns own = signs.of(unit);
        Course course = new Course(
                own,
                given,
                containment.parents().of(unit),
                containment.children().of(unit),
                shippedWithin(unit, Set.of(unit)).distinct().toList(),
                keptOf.getOrDefault(unit, List.of()),
                deviations);
        return new UnitLacks(course, definitions.routes(own.item()), definitions.structures(own.item())).all();
    }

    // a shipment names the outermost unit alone, and all that may have been in it then left with it
    private Stream<Moment> shippedWithin(TraceRef unit, Set<TraceRef> inner) {
        return containment.parents().of(unit).stream()
                .filter(stay -> !inner.contains(stay.to()))
                .flatMap(stay -> Stream.concat(
                                signs.of(stay.to()).shipped().stream(),
                                shippedWithin(stay.to(), with(inner, stay.to())))
                        .filter(shipped -> stay.begin().early() <= shipped.late()
                                && shipped.early() <= stay.stayEnd().late()));
    }

    private static Set<TraceRef> with(Set<TraceRef> inner, TraceRef outer) {
        return Stream.concat(inner.stream(), Stream.of(outer)).collect(Collectors.toSet());
    }

    private Stream<Lack> components(Blending blend, List<Deviation> excused) {
        List<StructureRevision> formulas = definitions.structures(blend.item());
        return InForce.at(blend.at(), blend.item(), formulas).stream()
                .flatMap(formula -> formula.positions().values().stream())
                .distinct()
                .filter(items -> items.stream().noneMatch(blend.components()::contains))
                .filter(items -> excused.stream()
                        .noneMatch(deviation -> deviation.item() != null && items.contains(deviation.item())))
                .map(items -> Lack.ofComponent(items, making(TraceRef.lot(blend.lot()), blend.entry(), blend.at())));
    }

    static Happening making(TraceRef made, long entry, Moment at) {
        Moment start = Moment.at(at.early());
        Moment end = Moment.at(at.late());
        return new Happening(made, entry, start, end, Set.of(), Set.of(), null, null);
    }
}
