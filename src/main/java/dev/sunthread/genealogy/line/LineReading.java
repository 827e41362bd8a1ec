package dev.sunthread.genealogy.line;

import dev.sunthread.genealogy.records.OpenLine;
import dev.sunthread.genealogy.records.OpenLine.Part;
import dev.sunthread.genealogy.records.OpenLine.Spot;
import dev.sunthread.genealogy.records.OpenLine.Use;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.inbox.KeptLine;
import dev.sunthread.inbox.LineText;
import dev.sunthread.inbox.LineText.Said;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Puts together what a kept line tells: what its text says, and what was found to be named in it when it was kept. */
public final class LineReading {

    private static final Map<String, List<TraceKind>> NAMING = Map.of(
            "serial", List.of(TraceKind.UNIT),
            "lot", List.of(TraceKind.LOT),
            "lots", List.of(TraceKind.LOT),
            "into", List.of(TraceKind.LOT),
            "container", List.of(TraceKind.CONTAINER),
            "label", List.of(TraceKind.CONTAINER),
            "carrier", List.of(TraceKind.CARRIER),
            "run", List.of(TraceKind.CURE_RUN, TraceKind.TEST_RUN));

    private static final Map<KeptLine.NameKind, String> FIELDS = Map.of(
            KeptLine.NameKind.UNIT, "serial",
            KeptLine.NameKind.LOT, "lot",
            KeptLine.NameKind.CONTAINER, "container",
            KeptLine.NameKind.POSITION, "position",
            KeptLine.NameKind.CARRIER, "carrier",
            KeptLine.NameKind.RUN, "run");

    /** Kinds whose positions are those of a parent or of equipment, and not of a station. */
    private static final Set<String> OF_NO_STATION =
            Set.of("installation", "removal", "carrier-load", "carrier-unload", "cure-run", "test-run");

    /** The fields by which a use tells of what it was. */
    private static final Set<String> MATERIAL = Set.of("lot", "container");

    /** Kinds that always are about a position: one that names none broke off before it. */
    private static final Set<String> OF_A_POSITION = Set.of("charge", "discharge", "clean-point");

    private final LineNames names;
    private final Map<Stranger, TraceRef> strangers = new LinkedHashMap<>();

    /** A thing that nothing but kept lines names. */
    public record Stranger(TraceKind kind, String name) {}

    public LineReading(LineNames names) {
        this.names = names;
    }

    /** All that stands in a line and may be a name. */
    public static List<Said> saidIn(LineText text, List<KeptLine.Name> kept) {
        List<Said> said = new ArrayList<>(text.said());
        Set<String> texts = new HashSet<>();
        said.forEach(one -> texts.add(one.text()));
        kept.stream()
                .filter(name -> !texts.contains(name.name()))
                .map(name -> LineText.somewhere(Objects.requireNonNull(FIELDS.get(name.kind())), name.name()))
                .forEach(said::add);
        return said;
    }

    /** The kinds of thing that a text may name; a position is none of them. */
    public static List<TraceKind> kindsOf(Said said) {
        return NAMING.getOrDefault(said.name(), List.of());
    }

    public OpenLine line(long entry, LineText text, List<KeptLine.Name> kept) {
        List<Said> said = saidIn(text, kept);
        LineNames.Entry target =
                text.one("entry").findFirst().flatMap(names::entry).orElse(null);
        String kind = text.kind().orElse(null);
        boolean takesBack = kind == null || LineWays.TAKING_BACK.contains(kind);
        String meant = "correction".equals(kind) ? target == null ? null : target.kind() : kind;
        String station = text.one("station").findFirst().orElse(null);
        Moment start = told(text.startedAt(), station);
        Moment end = told("correction".equals(kind) ? corrected(text, target) : text.occurredAt(), station);
        return new OpenLine(
                entry,
                meant,
                start == null ? end == null ? Moment.SINCE_EVER : end : start,
                end == null ? Moment.NEVER : end,
                takesBack && target != null ? target.number() : null,
                text.one("operation").findFirst().orElse(null),
                text.one("position").findFirst().orElse(null),
                said.stream().flatMap(one -> parts(one, meant)).distinct().toList(),
                positions(said, text, meant),
                LineWays.isStep(meant) ? uses(text) : Set.of());
    }

    // one that tells its lot or its container is of that; behind a break there may be more
    private Set<Use> uses(LineText text) {
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

    private static @Nullable OffsetDateTime corrected(LineText text, LineNames.@Nullable Entry target) {
        OffsetDateTime stated = text.reallyOccurredAt();
        return stated != null || target == null ? stated : target.occurredAt();
    }

    private @Nullable Moment told(@Nullable OffsetDateTime at, @Nullable String station) {
        return at == null ? null : names.told(station, at);
    }

    /** The nodes that stand for what nothing but the lines read so far names; their numbers are less than nought. */
    public Map<Stranger, TraceRef> strangers() {
        return strangers;
    }

    private Stream<Part> parts(Said said, @Nullable String kind) {
        List<TraceKind> kinds = kindsOf(said).stream()
                .filter(one -> one != TraceKind.CURE_RUN || !"test-run".equals(kind))
                .filter(one -> one != TraceKind.TEST_RUN || !"cure-run".equals(kind))
                .toList();
        List<TraceRef> known = kinds.stream()
                .flatMap(one -> names.of(one, said.text()).stream())
                .toList();
        Stream<TraceRef> nodes = known.isEmpty() ? kinds.stream().map(one -> stranger(one, said)) : known.stream();
        return nodes.map(node -> new Part(said.field(), said.within(), node));
    }

    private TraceRef stranger(TraceKind kind, Said said) {
        return strangers.computeIfAbsent(
                new Stranger(kind, said.text()), any -> new TraceRef(kind, -1L - strangers.size()));
    }

    private Set<Spot> positions(List<Said> said, LineText text, @Nullable String kind) {
        if (kind != null && OF_NO_STATION.contains(kind)) {
            return Set.of();
        }
        String station = text.one("station").findFirst().orElse(null);
        List<Said> named =
                said.stream().filter(one -> one.name().equals("position")).toList();
        Stream<Spot> spots = named.isEmpty() && kind != null && OF_A_POSITION.contains(kind)
                ? spots(LineText.SOMEWHERE, station, null)
                : named.stream().flatMap(one -> spots(one.within(), station, one.text()));
        return spots.collect(Collectors.toSet());
    }

    private Stream<Spot> spots(String within, @Nullable String station, @Nullable String code) {
        return names.positions(station, code).stream().map(position -> new Spot(within, position));
    }
}
