package dev.sunthread.genealogy;

import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds what is demanded and not recorded: of units, of uses whose lot nothing tells, and of blends. */
final class Lacks {

    private final Records records;
    private final Readings readings;
    private final Containment containment;
    private final Reach reach;
    private final Definitions definitions;
    private final Signs signs;
    private final MaterialEdges material;
    private final Map<TraceRef, List<Lack>> known = new HashMap<>();

    Lacks(
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
        this.material = material;
    }

    /** What these units lack. */
    List<Lack> of(Collection<TraceRef> units) {
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
    List<Lack> inUsesOf(Collection<Happening> happenings) {
        return uncovered(readings.usesIn(happenings));
    }

    /** Uses of these items in the whole plant of which no record tells what was loaded. */
    List<Lack> inUsesOfItems(Collection<Long> items) {
        return uncovered(records.uses().unscanned(items));
    }

    List<Lack> ofBlends(Collection<Blending> blends) {
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

    private boolean isDemanded(TraceRef unit) {
        long item = signs.of(unit).item();
        return !definitions.routes(item).isEmpty()
                || !definitions.structures(item).isEmpty();
    }

    private void learn(List<TraceRef> units) {
        if (units.isEmpty()) {
            return;
        }
        Set<Happening> happenings = readings.thatMayReach(units);
        reach.learn(happenings);
        Map<TraceRef, Set<Long>> items = readings.usesIn(happenings).stream()
                .filter(use -> use.item() != null)
                .collect(Collectors.groupingBy(
                        RecordedUse::step,
                        Collectors.mapping(use -> Objects.requireNonNull(use.item()), Collectors.toSet())));
        Map<TraceRef, List<Given>> given = new HashMap<>();
        for (Happening happening : happenings) {
            reach.of(happening)
                    .forEach((unit, certainty) -> given.computeIfAbsent(unit, any -> new ArrayList<>())
                            .add(new Given(happening, certainty, items.getOrDefault(happening.node(), Set.of()))));
        }
        Map<TraceRef, List<Deviation>> deviations =
                records.demands().deviations(units).stream().collect(Collectors.groupingBy(Deviation::node));
        containment.parents().learn(units);
        containment.children().learn(units);
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
                deviations);
        return new UnitLacks(course, definitions.routes(own.item()), definitions.structures(own.item())).all();
    }

    private List<Lack> uncovered(Collection<RecordedUse> uses) {
        List<RecordedUse> open =
                uses.stream().filter(use -> !material.isCovered(use)).toList();
        Map<TraceRef, Happening> steps = readings
                .of(open.stream().map(RecordedUse::step).toList())
                .stream()
                .collect(Collectors.toMap(Happening::node, step -> step));
        Set<Lack> lacks = new HashSet<>();
        for (RecordedUse use : open) {
            Happening step = steps.get(use.step());
            if (step != null && use.item() != null) {
                lacks.add(Lack.ofMaterial(Set.of(use.item()), step));
            }
        }
        return List.copyOf(lacks);
    }

    private Stream<Lack> components(Blending blend, List<Deviation> excused) {
        List<StructureRevision> formulas = definitions.structures(blend.item());
        return InForce.at(blend.at(), blend.item(), formulas).stream()
                .flatMap(formula -> formula.positions().values().stream())
                .distinct()
                .filter(items -> items.stream().noneMatch(blend.components()::contains))
                .filter(items -> excused.stream()
                        .noneMatch(deviation -> deviation.item() != null && items.contains(deviation.item())))
                .map(items -> Lack.ofComponent(items, mixing(blend), blend.lot()));
    }

    private static Happening mixing(Blending blend) {
        Moment start = Moment.at(blend.at().early());
        Moment end = Moment.at(blend.at().late());
        return new Happening(TraceRef.lot(blend.lot()), blend.entry(), start, end, Set.of(), Set.of(), null, null);
    }
}
