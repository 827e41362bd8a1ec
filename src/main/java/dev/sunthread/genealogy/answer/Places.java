package dev.sunthread.genealogy.answer;

import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.EdgeSource;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Says where units are at a cut-off: inside which parents, and where the outermost was last seen. */
final class Places {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");

    /** The last happening of a unit that tells a place, in words, and the place alone. */
    private static final String LAST_SEEN = """
            SELECT DISTINCT ON (unit) unit, told, at, spot FROM (
              SELECT b.unit, coalesce('at station ' || s.code, 'born') AS told, b.born_at AS at, b.entry,
                coalesce('at station ' || s.code, 'born') AS spot
              FROM production.birth b LEFT JOIN catalog.station s ON s.id = b.station WHERE b.unit = ANY (:ids)
              UNION ALL
              SELECT u.unit, 'at station ' || s.code, t.ended_at, t.entry, 'at station ' || s.code
              FROM production.step_unit u JOIN production.step t USING (entry) JOIN catalog.station s ON s.id = t.station
              WHERE u.unit = ANY (:ids)
              UNION ALL
              SELECT r.child_unit, coalesce('taken out at station ' || s.code, 'taken out'), r.removed_at, r.entry,
                coalesce('at station ' || s.code, 'taken out')
              FROM production.removal r LEFT JOIN catalog.station s ON s.id = r.station WHERE r.child_unit = ANY (:ids)
              UNION ALL
              SELECT u.unit, 'shipped to ' || h.consignee, h.shipped_at, h.entry, 'shipped to ' || h.consignee
              FROM production.shipment_unit u JOIN production.shipment h USING (entry) WHERE u.unit = ANY (:ids)
              UNION ALL
              SELECT u.unit, 'scrapped', u.scrapped_at, u.entry, 'scrapped' FROM production.scrapping u WHERE u.unit = ANY (:ids)
              UNION ALL
              SELECT l.unit, 'on carrier ' || c.code, l.loaded_at, l.entry, 'on a carrier'
              FROM production.carrier_load l JOIN production.carrier c ON c.id = l.carrier WHERE l.unit = ANY (:ids)
              UNION ALL
              SELECT l.unit, coalesce('taken off carrier ' || c.code || ' at station ' || s.code, 'taken off carrier ' || c.code),
                l.unloaded_at, l.entry, coalesce('at station ' || s.code, 'taken off a carrier')
              FROM production.carrier_unload l JOIN production.carrier c ON c.id = l.carrier
              LEFT JOIN catalog.station s ON s.id = l.station WHERE l.unit = ANY (:ids)
              UNION ALL
              SELECT u.unit, 'at ' || q.code || ' in cure run ' || n.number, r.ended_at, r.entry, 'at ' || q.code
              FROM cure.run_unit u JOIN cure.run_record r USING (entry) JOIN cure.run n ON n.id = r.run
              JOIN catalog.equipment q ON q.id = r.equipment WHERE u.unit = ANY (:ids)
              UNION ALL
              SELECT r.unit, 'at ' || q.code || ' in test run ' || n.number, r.ended_at, r.entry, 'at ' || q.code
              FROM electrical.run_record r JOIN electrical.run n ON n.id = r.run
              JOIN catalog.equipment q ON q.id = r.equipment WHERE r.unit = ANY (:ids)
              UNION ALL
              SELECT u.unit, 'returned from ' || u.consignee, u.returned_at, u.entry, 'returned from ' || u.consignee
              FROM production.unit_return u WHERE u.unit = ANY (:ids)) seen
            WHERE %s ORDER BY unit, at DESC, entry DESC
            """.formatted(Known.at("seen.entry"));

    private final JdbcClient jdbc;
    private final long cutoff;
    private final EdgeSource edges;
    private final Names names;
    private final ZoneId zone;
    private final Map<TraceRef, String> lastSeen = new HashMap<>();
    private final Map<TraceRef, String> spots = new HashMap<>();

    Places(JdbcClient jdbc, long cutoff, EdgeSource edges, Names names, ZoneId zone) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
        this.edges = edges;
        this.names = names;
        this.zone = zone;
    }

    /** Reads ahead, in few reads, where all these and what they are in were last seen. */
    void learn(Collection<TraceRef> units) {
        Set<TraceRef> open = new HashSet<>(units);
        Set<TraceRef> all = new HashSet<>();
        while (!open.isEmpty()) {
            all.addAll(open);
            Set<TraceRef> parents = new HashSet<>();
            edges.outOf(open).stream().filter(Places::isOpenStay).map(Edge::to).forEach(parents::add);
            parents.removeAll(all);
            open = parents;
        }
        names.learn(all);
        jdbc.sql(LAST_SEEN)
                .param("cutoff", cutoff)
                .param("ids", all.stream().map(TraceRef::id).toArray(Long[]::new))
                .query(row -> {
                    String since = DAY.format(
                            row.getObject(3, OffsetDateTime.class).toInstant().atZone(zone));
                    lastSeen.put(TraceRef.unit(row.getLong(1)), row.getString(2) + ", " + since);
                    spots.put(TraceRef.unit(row.getLong(1)), row.getString(4));
                });
    }

    /** The level of the unit that it is inside of; of several, by records that contradict each other, the first. */
    @Nullable
    String within(TraceRef unit) {
        return around(unit).map(parent -> names.of(parent).level()).orElse(null);
    }

    /** Where the outermost unit around it was seen last: the place alone, by which units are put together. */
    String spot(TraceRef unit) {
        Set<TraceRef> seen = new HashSet<>();
        TraceRef outermost = unit;
        while (seen.add(outermost)) {
            outermost = around(outermost).orElse(outermost);
        }
        return spots.getOrDefault(outermost, "not seen anywhere");
    }

    private Optional<TraceRef> around(TraceRef unit) {
        return edges.outOf(List.of(unit)).stream()
                .filter(Places::isOpenStay)
                .map(Edge::to)
                .findFirst();
    }

    String of(TraceRef unit) {
        return of(unit, new HashSet<>());
    }

    private String of(TraceRef unit, Set<TraceRef> seen) {
        List<Edge> inside =
                edges.outOf(List.of(unit)).stream().filter(Places::isOpenStay).toList();
        if (inside.isEmpty() || !seen.add(unit)) {
            return lastSeen.getOrDefault(unit, "not seen anywhere");
        }
        List<String> told = new ArrayList<>();
        for (Edge stay : inside) {
            String position = stay.reason().named().get("position");
            told.add("in " + names.of(stay.to()).words() + (position == null ? "" : " at " + position) + ", "
                    + of(stay.to(), seen));
        }
        return String.join(" - or, by a record that contradicts it, ", told);
    }

    private static boolean isOpenStay(Edge edge) {
        return edge.from().kind() == TraceKind.UNIT
                && edge.to().kind() == TraceKind.UNIT
                && edge.stayEnd().late() == Long.MAX_VALUE;
    }
}
