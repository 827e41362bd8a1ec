package dev.sunthread.genealogy;

import dev.sunthread.genealogy.records.LineRecords;
import dev.sunthread.genealogy.records.OpenLine;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Lines that were said to be kept. */
final class MemoryLines implements LineRecords {

    private static final Pattern OCCURRED = Pattern.compile("\"occurredAt\":\"([^\"]+)\"");

    private final Remembered remembered;
    private final List<OpenLine> open;

    MemoryLines(Remembered remembered) {
        this.remembered = remembered;
        this.open = remembered.of("kept-line").map(this::line).toList();
    }

    @Override
    public List<OpenLine> open() {
        return open;
    }

    private OpenLine line(Said line) {
        Set<TraceRef> named = new HashSet<>();
        Set<Long> positions = new HashSet<>();
        for (Map<String, Object> name : Remembered.list(line, "names")) {
            String text = (String) Objects.requireNonNull(name.get("name"));
            switch ((String) Objects.requireNonNull(name.get("kind"))) {
                case "unit" -> add(TraceKind.UNIT, text, named);
                case "lot" -> add(TraceKind.LOT, text, named);
                case "container" -> add(TraceKind.CONTAINER, text, named);
                default -> positions.addAll(positions(text));
            }
        }
        Moment told = occurred(line.text("text"));
        return new OpenLine(
                remembered.entry(line),
                told == null ? Moment.SINCE_EVER : told,
                told == null ? Moment.NEVER : told,
                named,
                positions);
    }

    private void add(TraceKind kind, String name, Set<TraceRef> named) {
        if (remembered.isKnown(name)) {
            named.add(remembered.numbers().node(kind, name));
        }
    }

    private Set<Long> positions(String code) {
        return remembered
                .of("station")
                .filter(station -> Remembered.texts(station.body(), "positions").contains(code))
                .map(station -> remembered.numbers().position(station.text("station"), code))
                .collect(Collectors.toSet());
    }

    private @Nullable Moment occurred(String text) {
        Matcher found = OCCURRED.matcher(text);
        return found.find() ? remembered.told(null, Said.micros(OffsetDateTime.parse(found.group(1)))) : null;
    }
}
