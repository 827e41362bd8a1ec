package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.records.Installation;
import dev.sunthread.genealogy.records.PlacementFacts;
import dev.sunthread.genealogy.records.Removal;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Reads what history tells at a cut-off of loads and unloads; always all of a carrier, for one may contradict another. */
final class CarrierHistory {

    private static final String LOADS = """
            SELECT l.entry, l.carrier, l.unit, l.inner_carrier, l.position, l.station, %s
            FROM production.carrier_load l WHERE l.carrier = ANY (:ids) AND %s
            """.formatted(Sql.micros("l.loaded_at"), Known.at("l.entry"));

    private static final String UNLOADS = """
            SELECT l.entry, l.carrier, l.unit, l.inner_carrier, NULL, l.station, %s
            FROM production.carrier_unload l WHERE l.carrier = ANY (:ids) AND %s
            """.formatted(Sql.micros("l.unloaded_at"), Known.at("l.entry"));

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
        return of(jdbc.sql(HOLDING)
                .param("units", Sql.ids(carried, TraceKind.UNIT))
                .param("carriers", Sql.ids(carried, TraceKind.CARRIER))
                .query((row, number) -> row.getLong(1))
                .list()
                .toArray(Long[]::new));
    }

    PlacementFacts of(Long[] carriers) {
        if (carriers.length == 0) {
            return PlacementFacts.NONE;
        }
        List<Installation> loads = read(LOADS, carriers);
        List<Removal> unloads = read(UNLOADS, carriers).stream()
                .map(one -> new Removal(one.entry(), one.child(), one.parent(), one.position(), one.at()))
                .toList();
        return new PlacementFacts(loads, unloads);
    }

    private List<Installation> read(String sql, Long[] carriers) {
        return jdbc.sql(sql)
                .param("ids", carriers)
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
