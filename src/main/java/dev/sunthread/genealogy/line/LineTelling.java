package dev.sunthread.genealogy.line;

import dev.sunthread.genealogy.records.OpenLine;
import dev.sunthread.genealogy.records.OpenLine.Part;
import dev.sunthread.genealogy.records.OpenLine.Spot;
import dev.sunthread.genealogy.records.OpenLine.Use;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.inbox.LineText;
import dev.sunthread.inbox.LineText.Said;
import dev.sunthread.kernel.TraceKind;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What one kept line tells as a line of one kind or another. */
final class LineTelling {

    /** Kinds whose positions are those of a parent or of equipment, and not of a station. */
    private static final Set<String> OF_NO_STATION =
            Set.of("installation", "removal", "carrier-load", "carrier-unload", "cure-run", "test-run");

    /** Kinds that always are about a position: one that names none broke off before it. */
    private static final Set<String> OF_A_POSITION = Set.of("charge", "discharge", "clean-point");

    /** The fields by which a use tells of what it was. */
    private static final Set<String> MATERIAL = Set.of("lot", "container");

    private final long entry;
    private final LineText text;
    private final List<Said> said;
    private final LineNames names;
    private final BiFunction<Said, @Nullable String, Stream<Part>> parts;
    private final @Nullable String kind;
    private final LineNames.@Nullable Entry target;
    private final @Nullable String station;

    LineTelling(
            long entry,
            LineText text,
            List<Said> said,
            LineNames names,
            BiFunction<Said, @Nullable String, Stream<Part>> parts) {
        this.entry = entry;
        this.text = text;
        this.said = said;
        this.names = names;
        this.parts = parts;
        this.kind = text.kind().filter(LineWays::isKnown).orElse(null);
        this.target = text.one("entry").findFirst().flatMap(names::entry).orElse(null);
        this.station = text.one("station").findFirst().orElse(null);
    }

    List<OpenLine> lines() {
        String meant = meant();
        if (meant != null) {
            return List.of(as(meant));
        }
        Set<String> kinds = LineKinds.thatFit(said);
        return kinds.isEmpty()
                ? List.of(as(null))
                : kinds.stream().map(this::as).toList();
    }

    /** The kind of happening that it is about, if that is known. */
    private @Nullable String meant() {
        if (tellsAnew()) {
            return target == null ? null : target.kind();
        }
        return kind == null && target != null ? "void" : kind;
    }

    private boolean tellsAnew() {
        boolean mayTellMore = !text.isWhole() || said.stream().anyMatch(LineKinds::isName);
        return "correction".equals(kind) || kind == null && target != null && mayTellMore;
    }

    private boolean takesBack() {
        return kind == null || LineWays.TAKING_BACK.contains(kind);
    }

    private OpenLine as(@Nullable String one) {
        Moment start = told(text.startedAt());
        Moment end = told(tellsAnew() ? corrected() : text.occurredAt());
        return new OpenLine(
                entry,
                one,
                start == null ? end == null ? Moment.SINCE_EVER : end : start,
                end == null ? Moment.NEVER : end,
                takesBack() && target != null ? target.number() : null,
                text.one("operation").findFirst().orElse(null),
                text.one("position").findFirst().orElse(null),
                parts(one),
                one == null ? Set.of() : positions(one),
                one == null ? Set.of() : uses(one));
    }

    // what broke off before its lot was loaded from a container of that
    private List<Part> parts(@Nullable String of) {
        List<Part> named =
                said.stream().flatMap(name -> parts.apply(name, of)).distinct().toList();
        boolean lacksItsLot = "charge".equals(of) && named.stream().noneMatch(part -> part.isOf(TraceKind.LOT));
        return lacksItsLot
                ? named.stream()
                        .flatMap(part -> Stream.concat(
                                Stream.of(part),
                                names.lotsIn(part.node()).stream()
                                        .map(lot -> new Part(part.field(), part.within(), lot))))
                        .toList()
                : named;
    }

    private @Nullable OffsetDateTime corrected() {
        OffsetDateTime stated = text.reallyOccurredAt();
        return stated != null || target == null ? stated : target.occurredAt();
    }

    private @Nullable Moment told(@Nullable OffsetDateTime at) {
        return at == null ? null : names.told(station, at);
    }

    private Set<Spot> positions(String of) {
        if (OF_NO_STATION.contains(of)) {
            return Set.of();
        }
        boolean isAlwaysOfOne = OF_A_POSITION.contains(of);
        List<Said> named =
                said.stream().filter(one -> one.name().equals("position")).toList();
        if (named.isEmpty()) {
            boolean brokeOff = isAlwaysOfOne && (kind != null || !text.isWhole());
            return brokeOff ? spots(LineText.SOMEWHERE, names.positions(station, null)) : Set.of();
        }
        return named.stream()
                .flatMap(one -> spots(one.within(), positions(one, isAlwaysOfOne || kind != null)).stream())
                .collect(Collectors.toSet());
    }

    // one that nowhere is a position is not what was meant, which may be any
    private Set<Long> positions(Said code, boolean isOfOne) {
        Set<Long> so = names.positions(station, code.text());
        return so.isEmpty() && isOfOne ? names.positions(station, null) : so;
    }

    private static Set<Spot> spots(String within, Set<Long> positions) {
        return positions.stream().map(position -> new Spot(within, position)).collect(Collectors.toSet());
    }

    private Set<Use> uses(String of) {
        String sources = LineWays.SOURCES.get(of);
        if (sources == null) {
            return "step".equals(of) ? usesOfStep() : Set.of();
        }
        boolean goOn = text.brokeOffBeforeTheEndOf(sources) && !sources.equals("lot");
        boolean isNone = said.stream().noneMatch(one -> LineWays.isSource(one.field(), sources));
        return goOn || isNone ? Set.of(new Use(LineText.SOMEWHERE, Set.of())) : Set.of();
    }

    // one that tells its lot or its container is of that; behind a break there may be more
    private Set<Use> usesOfStep() {
        Map<String, List<Said>> told = text.said().stream()
                .filter(one -> one.field().equals("uses." + one.name()))
                .collect(Collectors.groupingBy(Said::within));
        Set<Use> uses = new HashSet<>();
        told.forEach((within, use) -> {
            if (use.stream().noneMatch(one -> MATERIAL.contains(one.name()))) {
                uses.add(new Use(within, items(use)));
            }
        });
        if (text.brokeOffBeforeTheEndOf("uses")) {
            uses.add(new Use(LineText.SOMEWHERE, Set.of()));
        }
        return uses;
    }

    private Set<Long> items(List<Said> use) {
        return use.stream()
                .filter(one -> one.name().equals("item"))
                .flatMap(one -> names.items(one.text()).stream())
                .collect(Collectors.toSet());
    }
}
