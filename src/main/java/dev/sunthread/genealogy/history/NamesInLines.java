package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.line.LineNames;
import dev.sunthread.genealogy.line.LineReading;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.inbox.LineText.Said;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
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
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Looks up what the names in kept lines are names of; those of each kind are read together. */
final class NamesInLines implements LineNames {

    private static final Map<TraceKind, String> READ = Map.of(
            TraceKind.UNIT, "SELECT u.serial, u.id FROM production.unit u WHERE u.serial = ANY (:names)",
            TraceKind.LOT, "SELECT m.number, m.id FROM materials.lot m WHERE m.number = ANY (:names)",
            TraceKind.CONTAINER, "SELECT c.label, c.id FROM materials.container c WHERE c.label = ANY (:names)",
            TraceKind.CARRIER, "SELECT c.code, c.id FROM production.carrier c WHERE c.code = ANY (:names)",
            TraceKind.CURE_RUN, "SELECT r.number, r.id FROM cure.run r WHERE r.number = ANY (:names)",
            TraceKind.TEST_RUN, "SELECT r.number, r.id FROM electrical.run r WHERE r.number = ANY (:names)");

    private record Place(String station, long stationId, String code, long id) {}

    private final JdbcClient jdbc;
    private final Clocks clocks;
    private final Map<TraceKind, Set<String>> asked = new EnumMap<>(TraceKind.class);
    private final Map<TraceKind, Map<String, Set<TraceRef>>> known = new EnumMap<>(TraceKind.class);
    private @Nullable List<Place> places;

    NamesInLines(JdbcClient jdbc, Clocks clocks) {
        this.jdbc = jdbc;
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
                .param("names", asked.getOrDefault(kind, Set.of()).toArray(String[]::new))
                .query((row, number) -> Map.entry(row.getString(1), new TraceRef(kind, row.getLong(2))))
                .list()
                .stream()
                .collect(Collectors.groupingBy(
                        Map.Entry::getKey, Collectors.mapping(Map.Entry::getValue, Collectors.toSet())));
    }

    @Override
    public Set<Long> positions(@Nullable String station, String code) {
        List<Place> so =
                places().stream().filter(place -> place.code().equals(code)).toList();
        boolean isThere = so.stream().anyMatch(place -> place.station().equals(station));
        return so.stream()
                .filter(place -> !isThere || place.station().equals(station))
                .map(Place::id)
                .collect(Collectors.toSet());
    }

    private List<Place> places() {
        if (places == null) {
            places = jdbc.sql("""
                            SELECT s.code, s.id, p.code, p.id FROM catalog.position p JOIN catalog.station s ON s.id = p.station
                            """)
                    .query((row, number) ->
                            new Place(row.getString(1), row.getLong(2), row.getString(3), row.getLong(4)))
                    .list();
        }
        return places;
    }

    @Override
    public Optional<Entry> entry(String id) {
        return jdbc.sql("""
                        SELECT e.number, coalesce(c.kind, e.kind), CASE WHEN c.entry IS NULL THEN e.occurred_at END FROM ledger.entry e
                        LEFT JOIN ledger.correction c ON c.entry = e.number WHERE e.id = :id
                        """)
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
