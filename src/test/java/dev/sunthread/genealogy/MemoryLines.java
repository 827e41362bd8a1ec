package dev.sunthread.genealogy;

import dev.sunthread.genealogy.line.LineNames;
import dev.sunthread.genealogy.line.LineReading;
import dev.sunthread.genealogy.records.LineRecords;
import dev.sunthread.genealogy.records.OpenLine;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.inbox.KeptLine;
import dev.sunthread.inbox.LineText;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Lines that were said to be kept. */
final class MemoryLines implements LineRecords, LineNames {

    private record Place(String station, String code) {}

    private final Remembered remembered;
    private final LineReading reading;
    private final List<OpenLine> open;

    MemoryLines(Remembered remembered) {
        this.remembered = remembered;
        this.reading = new LineReading(this);
        this.open = remembered
                .of("kept-line")
                .flatMap(line ->
                        reading.lines(remembered.entry(line), LineText.of(line.text("text")), names(line)).stream())
                .toList();
    }

    @Override
    public List<OpenLine> open() {
        return open;
    }

    @Override
    public Map<TraceRef, String> strangers() {
        return reading.strangers().entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getValue, one -> one.getKey().name()));
    }

    private static List<KeptLine.Name> names(Said line) {
        return Remembered.list(line, "names").stream()
                .map(name -> new KeptLine.Name(
                        KeptLine.NameKind.valueOf(text(name, "kind").toUpperCase(Locale.ROOT)), text(name, "name")))
                .toList();
    }

    private static String text(Map<String, Object> name, String field) {
        return (String) Objects.requireNonNull(name.get(field));
    }

    @Override
    public Collection<TraceRef> of(TraceKind kind, String name) {
        return remembered.isKnown(kind, name) ? Set.of(remembered.numbers().node(kind, name)) : Set.of();
    }

    @Override
    public Set<Long> positions(@Nullable String station, @Nullable String code) {
        List<Place> all = remembered
                .of("station")
                .flatMap(one -> Remembered.texts(one.body(), "positions").stream()
                        .map(position -> new Place(one.text("station"), position)))
                .toList();
        List<Place> there =
                all.stream().filter(place -> place.station().equals(station)).toList();
        List<Place> so = all.stream()
                .filter(place -> code == null || place.code().equals(code))
                .toList();
        List<Place> both = so.stream().filter(there::contains).toList();
        return (both.isEmpty() ? Stream.concat(so.stream(), there.stream()) : both.stream())
                .map(place -> remembered.numbers().position(place.station(), place.code()))
                .collect(Collectors.toSet());
    }

    @Override
    public Set<Long> items(String number) {
        return remembered.of("item").anyMatch(one -> one.text("item").equals(number))
                ? Set.of(remembered.numbers().item(number))
                : Set.of();
    }

    @Override
    public Set<TraceRef> lotsIn(TraceRef container) {
        return remembered
                .of("container")
                .filter(one -> one.maps("containers").stream()
                        .anyMatch(filled -> remembered
                                .numbers()
                                .node(TraceKind.CONTAINER, text(filled, "label"))
                                .equals(container)))
                .map(one -> remembered.lot(one.text("lot")))
                .collect(Collectors.toSet());
    }

    @Override
    public Optional<Entry> entry(String id) {
        return remembered
                .everSaid()
                .filter(one -> one.id().equals(id))
                .map(one -> new Entry(
                        remembered.entry(one),
                        remembered.meant(one),
                        one.kind().equals("correction") ? null : one.at()))
                .findFirst();
    }

    @Override
    public Moment told(@Nullable String station, OffsetDateTime at) {
        boolean isKnown =
                remembered.of("station").anyMatch(one -> one.text("station").equals(station));
        return remembered.told(isKnown ? station : null, Said.micros(at));
    }
}
