package dev.sunthread.genealogy.line;

import dev.sunthread.genealogy.records.OpenLine;
import dev.sunthread.genealogy.records.OpenLine.Part;
import dev.sunthread.inbox.KeptLine;
import dev.sunthread.inbox.LineText;
import dev.sunthread.inbox.LineText.Said;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
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

    /** What a line tells: as a line of its kind, or if that can't be read as one of each kind that its fields fit. */
    public List<OpenLine> lines(long entry, LineText text, List<KeptLine.Name> kept) {
        return new LineTelling(entry, text, saidIn(text, kept), names, this::parts).lines();
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
}
