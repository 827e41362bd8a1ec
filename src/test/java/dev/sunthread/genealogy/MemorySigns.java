package dev.sunthread.genealogy;

import dev.sunthread.genealogy.demand.UnitDemand;
import dev.sunthread.genealogy.line.LineDoubts;
import dev.sunthread.genealogy.records.OpenLine;
import dev.sunthread.genealogy.records.SignRecords;
import dev.sunthread.genealogy.records.UnitSigns;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.genealogy.walk.Starts;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.LongSummaryStatistics;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The signs of units that were said. */
final class MemorySigns implements SignRecords, Starts {

    private final Remembered remembered;
    private final List<OpenLine> lines;
    private final Map<String, String> items = new HashMap<>();
    private final Map<TraceRef, UnitSigns> signs = new HashMap<>();
    private final Map<TraceRef, Set<Said>> births = new HashMap<>();

    MemorySigns(Remembered remembered, List<OpenLine> lines) {
        this.remembered = remembered;
        this.lines = lines;
        named().forEach(unit -> items.put(text(unit, "serial"), text(unit, "item")));
        remembered
                .of("birth")
                .forEach(one -> units(one)
                        .forEach(unit -> births.computeIfAbsent(unit, any -> new HashSet<>())
                                .add(one)));
        items.forEach((serial, item) -> signs.put(unit(serial), signs(serial, item)));
    }

    private Stream<Map<String, Object>> named() {
        return remembered
                .everSaid()
                .filter(one -> !one.kind().equals("kept-line"))
                .flatMap(one -> collect(one.body()));
    }

    private static Stream<Map<String, Object>> collect(Object value) {
        if (value instanceof Map<?, ?> map) {
            Stream<Map<String, Object>> inner =
                    map.values().stream().flatMap(one -> collect(Objects.requireNonNull(one)));
            return map.containsKey("serial") ? Stream.of(unitOf(map)) : inner;
        }
        return value instanceof List<?> list
                ? list.stream().flatMap(one -> collect(Objects.requireNonNull(one)))
                : Stream.empty();
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> unitOf(Map<?, ?> map) {
        return (Map<String, Object>) map;
    }

    private UnitSigns signs(String serial, String item) {
        TraceRef unit = unit(serial);
        long first = remembered
                .of("birth")
                .filter(one -> units(one).anyMatch(unit::equals))
                .mapToLong(one -> remembered.told(one).early())
                .min()
                .orElse(Long.MIN_VALUE);
        UnitSigns signs = new UnitSigns(
                unit.id(),
                remembered.numbers().item(item),
                first,
                moments("shipment", unit, any -> true),
                moments("return", unit, any -> true),
                moments("scrap", unit, one -> !isTakenBack(one)));
        List<Moment> neverLeft = moments("shipment", unit, this::isTakenBack);
        return LineDoubts.of(neverLeft.isEmpty() ? signs : signs.returned(neverLeft), lines);
    }

    private boolean isTakenBack(Said one) {
        return LineDoubts.takenBack(lines).contains(remembered.entry(one));
    }

    private List<Moment> moments(String kind, TraceRef unit, Predicate<Said> counts) {
        return remembered
                .of(kind)
                .filter(one -> units(one).anyMatch(unit::equals) && counts.test(one))
                .map(one -> remembered.told(null, one.instant()))
                .toList();
    }

    private Stream<TraceRef> units(Said one) {
        return one.maps("units").stream().map(remembered::unit);
    }

    private TraceRef unit(String serial) {
        return remembered.numbers().node(TraceKind.UNIT, serial);
    }

    private static String text(Map<String, Object> body, String field) {
        return (String) Objects.requireNonNull(body.get(field), field);
    }

    @Override
    public List<UnitSigns> of(Collection<Long> units) {
        return List.copyOf(signs.values());
    }

    @Override
    public List<UnitSigns> thatMayHaveBeenFree(Collection<Long> wanted, Moment window) {
        return List.copyOf(signs.values());
    }

    @Override
    public List<UnitSigns> thereBy(long instant) {
        return signs.values().stream().filter(one -> one.first() <= instant).toList();
    }

    @Override
    public Set<Long> thatMayLack(Collection<UnitDemand> demands) {
        return signs.keySet().stream().map(TraceRef::id).collect(Collectors.toSet());
    }

    @Override
    public Set<Long> bornAgain(Collection<Long> units) {
        return units.stream()
                .filter(unit -> isBornAgain(
                        births.getOrDefault(TraceRef.unit(unit), Set.of()),
                        LineDoubts.born(lines).contains(unit)))
                .collect(Collectors.toSet());
    }

    private static boolean isBornAgain(Set<Said> births, boolean byALine) {
        LongSummaryStatistics instants =
                births.stream().mapToLong(Said::instant).summaryStatistics();
        Set<String> stations = births.stream()
                .map(one -> String.valueOf(one.textOrNull("station")))
                .collect(Collectors.toSet());
        return byALine && !births.isEmpty()
                || births.size() > 1
                        && (stations.size() > 1
                                || stations.contains("null")
                                || instants.getMax() - instants.getMin() > Moment.TOLD_TWICE);
    }

    /** Since when a unit counts as a suspect: from its first birth; all else since ever. */
    @Override
    public long of(TraceRef node) {
        UnitSigns own = signs.get(node);
        return own == null ? Long.MIN_VALUE : own.first();
    }
}
