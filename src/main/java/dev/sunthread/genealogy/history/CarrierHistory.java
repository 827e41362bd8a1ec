package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.records.Elsewhere;
import dev.sunthread.genealogy.records.Installation;
import dev.sunthread.genealogy.records.PlacementFacts;
import dev.sunthread.genealogy.records.Removal;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Reads what history tells at a cut-off of loads and unloads; always all of a carrier, for one may contradict another, and
 * all of what was on it and on other ones, with what took everything off those.
 */
final class CarrierHistory {

    private static final String LOADS = """
            SELECT l.entry, l.carrier, l.unit, l.inner_carrier, l.position, l.station, %s
            FROM production.carrier_load l WHERE %%s AND %s
            """.formatted(Sql.micros("l.loaded_at"), Known.at("l.entry"));

    private static final String UNLOADS = """
            SELECT l.entry, l.carrier, l.unit, l.inner_carrier, NULL, l.station, %s
            FROM production.carrier_unload l WHERE %%s AND %s
            """.formatted(Sql.micros("l.unloaded_at"), Known.at("l.entry"));

    private static final String OF_CARRIER = "l.carrier = ANY (:ids)";

    private static final String OF_CARRIED = "(l.unit = ANY (:ids) OR l.inner_carrier = ANY (:carriers))";

    private static final String OF_ALL = OF_CARRIER + " AND l.unit IS NULL AND l.inner_carrier IS NULL";

    private static final String ELSEWHERE = """
            SELECT i.child_unit, i.station, %s FROM production.installation i WHERE i.child_unit = ANY (:ids) AND %s
            UNION ALL
            SELECT u.unit, NULL, %s FROM production.shipment_unit u JOIN production.shipment h USING (entry)
            WHERE u.unit = ANY (:ids) AND %s
            UNION ALL
            SELECT x.unit, x.station, %s FROM production.scrapping x WHERE x.unit = ANY (:ids) AND %s
            """.formatted(
                    Sql.micros("i.installed_at"),
                    Known.at("i.entry"),
                    Sql.micros("h.shipped_at"),
                    Known.at("h.entry"),
                    Sql.micros("x.scrapped_at"),
                    Known.at("x.entry"));

    private static final String HOLDING = """
            SELECT carrier FROM production.carrier_load WHERE unit = ANY (:units) OR inner_carrier = ANY (:carriers)
            UNION
            SELECT carrier FROM production.carrier_unload WHERE unit = ANY (:units) OR inner_carrier = ANY (:carriers)
            """;

    private final JdbcClient jdbc;
    private final long cutoff;
    private final Clocks clocks;

    CarrierHistory(JdbcClient jdbc, long cutoff, Clocks clocks) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
        this.clocks = clocks;
    }

    PlacementFacts carrying(Collection<TraceRef> carried) {
        return whole(jdbc.sql(HOLDING)
                .param("units", Sql.ids(carried, TraceKind.UNIT))
                .param("carriers", Sql.ids(carried, TraceKind.CARRIER))
                .query((row, number) -> row.getLong(1))
                .list()
                .toArray(Long[]::new));
    }

    PlacementFacts carriedBy(Long[] carriers) {
        PlacementFacts own = whole(carriers);
        Set<TraceRef> things = new HashSet<>();
        own.installations().forEach(load -> things.add(load.child()));
        own.removals().forEach(unload -> things.add(unload.child()));
        Set<Long> known = Set.of(carriers);
        known.forEach(carrier -> things.remove(TraceRef.carrier(carrier)));
        return things.isEmpty() ? own : own.and(elsewhereOf(things, known));
    }

    // of other carriers only what is told of these things, and that everything was taken off them
    private PlacementFacts elsewhereOf(Set<TraceRef> things, Set<Long> known) {
        Map<String, Object> carried =
                Map.of("ids", Sql.ids(things, TraceKind.UNIT), "carriers", Sql.ids(things, TraceKind.CARRIER));
        List<Installation> loads = read(LOADS.formatted(OF_CARRIED), carried);
        List<Installation> unloads = read(UNLOADS.formatted(OF_CARRIED), carried);
        Long[] others = Stream.concat(loads.stream(), unloads.stream())
                .map(one -> one.parent().id())
                .filter(carrier -> !known.contains(carrier))
                .distinct()
                .toArray(Long[]::new);
        List<Installation> all =
                others.length == 0 ? List.of() : read(UNLOADS.formatted(OF_ALL), Map.of("ids", others));
        return facts(loads, Stream.concat(unloads.stream(), all.stream()).toList())
                .notIn(known.stream().map(TraceRef::carrier).collect(Collectors.toSet()));
    }

    private PlacementFacts whole(Long[] carriers) {
        return carriers.length == 0
                ? PlacementFacts.NONE
                : facts(
                        read(LOADS.formatted(OF_CARRIER), Map.of("ids", carriers)),
                        read(UNLOADS.formatted(OF_CARRIER), Map.of("ids", carriers)));
    }

    List<Elsewhere> elsewhere(Collection<TraceRef> units) {
        Long[] ids = Sql.ids(units, TraceKind.UNIT);
        return ids.length == 0
                ? List.of()
                : jdbc.sql(ELSEWHERE)
                        .param("ids", ids)
                        .param("cutoff", cutoff)
                        .query((row, number) -> new Elsewhere(
                                TraceRef.unit(row.getLong(1)), clocks.told(Sql.optional(row, 2), row.getLong(3))))
                        .list();
    }

    private static PlacementFacts facts(List<Installation> loads, List<Installation> unloads) {
        return new PlacementFacts(
                loads,
                unloads.stream()
                        .map(one -> new Removal(one.entry(), one.child(), one.parent(), one.position(), one.at()))
                        .toList());
    }

    private List<Installation> read(String sql, Map<String, ?> params) {
        return jdbc.sql(sql)
                .params(params)
                .param("cutoff", cutoff)
                .query((row, number) -> told(row))
                .list();
    }

    // an unload that names nothing took everything off: it is told of the carrier itself
    private Installation told(ResultSet row) throws SQLException {
        TraceRef carrier = TraceRef.carrier(row.getLong(2));
        Long unit = Sql.optional(row, 3);
        Long inner = Sql.optional(row, 4);
        TraceRef child = unit != null ? TraceRef.unit(unit) : inner != null ? TraceRef.carrier(inner) : carrier;
        return new Installation(
                row.getLong(1), child, carrier, row.getString(5), clocks.told(Sql.optional(row, 6), row.getLong(7)));
    }
}
