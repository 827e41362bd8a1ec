package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.line.LineNames;
import dev.sunthread.genealogy.line.LineReading;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.inbox.LineText.Said;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Looks up what the names in kept lines are names of; those of each kind are read together. */
final class NamesInLines implements LineNames {

    private static final Map<TraceKind, String> READ = Map.of(
            TraceKind.UNIT, named("production.unit", "serial"),
            TraceKind.LOT, named("materials.lot", "number"),
            TraceKind.CONTAINER, named("materials.container", "label"),
            TraceKind.CARRIER, named("production.carrier", "code"),
            TraceKind.CURE_RUN, recorded("cure.run"),
            TraceKind.TEST_RUN, recorded("electrical.run"));

    private static final String PLACES = """
            SELECT s.code, s.id, p.code, p.id FROM catalog.position p JOIN catalog.station s ON s.id = p.station WHERE %s
            """.formatted(Known.named("p"));

    private static final String ITEMS =
            "SELECT r.item FROM catalog.item_revision r JOIN catalog.item i ON i.id = r.item WHERE i.number = :number AND "
                    + sealed("r.entry");

    private static final String LOTS_IN =
            "SELECT f.lot FROM materials.container_filling f WHERE f.container = :container AND " + Known.at("f.entry");

    private static final String ENTRY = """
            SELECT e.number, coalesce(c.kind, e.kind), CASE WHEN c.entry IS NULL THEN e.occurred_at END FROM ledger.entry e
            LEFT JOIN ledger.correction c ON c.entry = e.number WHERE e.id = :id AND %s
            """.formatted(sealed("e.number"));

    private static String named(String table, String column) {
        return "SELECT t.%2$s, t.id FROM %1$s t WHERE t.%2$s = ANY (:names) AND %3$s"
                .formatted(table, column, Known.named("t"));
    }

    private static String recorded(String table) {
        return ("SELECT t.number, t.id FROM %1$s t WHERE t.number = ANY (:names) AND EXISTS ("
                        + "SELECT FROM %1$s_record r WHERE r.run = t.id AND %2$s)")
                .formatted(table, sealed("r.entry"));
    }

    private static String sealed(String entry) {
        return "(SELECT kp.position FROM ledger.position kp WHERE kp.entry = %s) <= :cutoff".formatted(entry);
    }

    private record Place(String station, long stationId, String code, long id) {}

    private final JdbcClient jdbc;
    private final long cutoff;
    private final Clocks clocks;
    private final Map<TraceKind, Set<String>> asked = new EnumMap<>(TraceKind.class);
    private final Map<TraceKind, Map<String, Set<TraceRef>>> known = new EnumMap<>(TraceKind.class);
    private @Nullable List<Place> places;

    NamesInLines(JdbcClient jdbc, long cutoff, Clocks clocks) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
        this.clocks = clocks;
    }

    /** Takes down what stands in a line, so that it is looked up with all others. */
    void learn(List<Said> said) {
        said.forEach(one -> LineReading.kindsOf(one)
                .forEach(kind ->
                        asked.computeIfAbsent(kind, any -> new HashSet<>()).add(one.text())));
    }

    @Override
    public Collection<TraceRef> of(TraceKind kind, String name) {
        return known.computeIfAbsent(kind, this::read).getOrDefault(name, Set.of());
    }

    private Map<String, Set<TraceRef>> read(TraceKind kind) {
        return jdbc
                .sql(Objects.requireNonNull(READ.get(kind)))
                .param("cutoff", cutoff)
                .param("names", asked.getOrDefault(kind, Set.of()).toArray(String[]::new))
                .query((row, number) -> Map.entry(row.getString(1), new TraceRef(kind, row.getLong(2))))
                .list()
                .stream()
                .collect(Collectors.groupingBy(
                        Map.Entry::getKey, Collectors.mapping(Map.Entry::getValue, Collectors.toSet())));
    }

    @Override
    public Set<Long> positions(@Nullable String station, @Nullable String code) {
        List<Place> there = places().stream()
                .filter(place -> place.station().equals(station))
                .toList();
        List<Place> so = places().stream()
                .filter(place -> code == null || place.code().equals(code))
                .toList();
        List<Place> both = so.stream().filter(there::contains).toList();
        return (both.isEmpty() ? Stream.concat(so.stream(), there.stream()) : both.stream())
                .map(Place::id)
                .collect(Collectors.toSet());
    }

    private List<Place> places() {
        if (places == null) {
            places = jdbc.sql(PLACES)
                    .param("cutoff", cutoff)
                    .query((row, number) ->
                            new Place(row.getString(1), row.getLong(2), row.getString(3), row.getLong(4)))
                    .list();
        }
        return places;
    }

    @Override
    public Set<Long> items(String number) {
        return new HashSet<>(jdbc.sql(ITEMS)
                .param("number", number)
                .param("cutoff", cutoff)
                .query((row, at) -> row.getLong(1))
                .list());
    }

    @Override
    public Set<TraceRef> lotsIn(TraceRef container) {
        return new HashSet<>(jdbc.sql(LOTS_IN)
                .param("container", container.id())
                .param("cutoff", cutoff)
                .query((row, at) -> TraceRef.lot(row.getLong(1)))
                .list());
    }

    @Override
    public Optional<Entry> entry(String id) {
        return jdbc.sql(ENTRY)
                .param("cutoff", cutoff)
                .param("id", id)
                .query((row, number) ->
                        new Entry(row.getLong(1), row.getString(2), row.getObject(3, OffsetDateTime.class)))
                .optional();
    }

    @Override
    public Moment told(@Nullable String station, OffsetDateTime at) {
        Map<String, Long> stations = new HashMap<>();
        places().forEach(place -> stations.put(place.station(), place.stationId()));
        return clocks.told(stations.get(station), micros(at));
    }

    private static long micros(OffsetDateTime at) {
        try {
            return ChronoUnit.MICROS.between(Instant.EPOCH, at.toInstant());
        } catch (ArithmeticException beyondAllCalendars) {
            return at.getYear() < 0 ? Long.MIN_VALUE : Long.MAX_VALUE;
        }
    }
}
