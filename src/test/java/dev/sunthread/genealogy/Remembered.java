package dev.sunthread.genealogy;

import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What is believed of things said, with the numbers of what they name and the uncertainty of clocks put to times. */
final class Remembered {

    private static final Map<TraceKind, List<String>> FIELDS = Map.of(
            TraceKind.LOT, List.of("lot", "lots", "into"),
            TraceKind.CONTAINER, List.of("container", "label"),
            TraceKind.UNIT, List.of("serial"),
            TraceKind.CARRIER, List.of("carrier"));

    private static final Set<String> MOVES_NO_LOT = Set.of("removal", "hold");

    private final List<Said> said;
    private final FactsByHand facts;
    private final Numbers numbers;
    private final Map<String, List<Said>> byKind = new HashMap<>();
    private final Map<TraceKind, Set<String>> named = new EnumMap<>(TraceKind.class);
    private final long leastExact;

    Remembered(List<Said> said, Numbers numbers) {
        this.said = said;
        this.facts = new FactsByHand(said);
        this.numbers = numbers;
        FIELDS.forEach((kind, fields) -> fields.forEach(field -> known(kind).addAll(NamedThings.named(said, field))));
        said.forEach(one -> runIn(one).ifPresent(kind -> known(kind).addAll(NamedThings.named(List.of(one), "run"))));
        this.leastExact = of("station")
                .mapToLong(station -> Long.parseLong(station.text("clockUncertainty")) * 1_000_000)
                .max()
                .orElse(0);
    }

    /** Everything said, also what was taken back. */
    Stream<Said> everSaid() {
        return said.stream();
    }

    /** Every lot that was ever named where material came from or went, also in what was taken back. */
    Stream<TraceRef> lotsEverNamed() {
        List<Said> moved =
                said.stream().filter(one -> !MOVES_NO_LOT.contains(one.kind())).toList();
        return Stream.of("lot", "lots", "into")
                .flatMap(field -> NamedThings.named(moved, field).stream())
                .distinct()
                .map(this::lot);
    }

    Stream<Said> of(String kind) {
        return byKind.computeIfAbsent(kind, any -> facts.of(any).toList()).stream();
    }

    /** Whether anything but a kept line names it. */
    boolean isKnown(TraceKind kind, String name) {
        return known(kind).contains(name);
    }

    private Set<String> known(TraceKind kind) {
        return named.computeIfAbsent(kind, any -> new HashSet<>());
    }

    private static Optional<TraceKind> runIn(Said one) {
        return switch (one.kind()) {
            case "cure-run" -> Optional.of(TraceKind.CURE_RUN);
            case "test-run" -> Optional.of(TraceKind.TEST_RUN);
            default -> Optional.empty();
        };
    }

    /** The kind of happening that an entry tells, of a correction that of what it corrects. */
    String meant(Said one) {
        return facts.meantBy(one).kind();
    }

    Numbers numbers() {
        return numbers;
    }

    long entry(Said one) {
        return numbers.entry(one.id());
    }

    /** Its time, told by the clock of the station it names. */
    Moment told(Said one) {
        return told(one.textOrNull("station"), one.instant());
    }

    Moment told(@Nullable String station, long instant) {
        return Moment.within(instant, station == null ? leastExact : facts.uncertainty(station, instant));
    }

    /** From the early start to the late end of something that a station's clock told. */
    Moment told(String station, long start, long end) {
        return new Moment(told(station, start).early(), told(station, end).late());
    }

    /** When it began; at once if it says nothing of that. */
    Moment started(Said one, @Nullable String station) {
        var started = one.momentOrNull("startedAt");
        return told(station, started == null ? one.instant() : Said.micros(started));
    }

    TraceRef lot(Object number) {
        return numbers.node(TraceKind.LOT, (String) number);
    }

    TraceRef unit(Map<String, Object> unit) {
        return numbers.node(TraceKind.UNIT, (String) Objects.requireNonNull(unit.get("serial")));
    }

    TraceRef carrier(Object code) {
        return numbers.node(TraceKind.CARRIER, (String) code);
    }

    /** The lot of a part, or its container if that was scanned. */
    TraceRef vessel(Map<String, Object> part) {
        Object container = part.get("container");
        return container == null
                ? lot(Objects.requireNonNull(part.get("lot")))
                : numbers.node(TraceKind.CONTAINER, (String) container);
    }

    @SuppressWarnings("unchecked")
    static List<Map<String, Object>> list(Said one, String field) {
        return (List<Map<String, Object>>) one.body().getOrDefault(field, List.of());
    }

    @SuppressWarnings("unchecked")
    static List<String> texts(Map<String, Object> body, String field) {
        return (List<String>) body.getOrDefault(field, List.of());
    }
}
