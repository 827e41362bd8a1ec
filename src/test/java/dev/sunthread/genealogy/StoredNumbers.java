package dev.sunthread.genealogy;

import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The numbers that a database gave to what envelopes name. */
final class StoredNumbers implements Numbers {

    private static final Map<TraceKind, String> NODES = Map.of(
            TraceKind.LOT, "SELECT id FROM materials.lot WHERE number = ?",
            TraceKind.CONTAINER, "SELECT id FROM materials.container WHERE label = ?",
            TraceKind.UNIT, "SELECT id FROM production.unit WHERE serial = ?",
            TraceKind.CARRIER, "SELECT id FROM production.carrier WHERE code = ?",
            TraceKind.CURE_RUN, "SELECT id FROM cure.run WHERE number = ?",
            TraceKind.TEST_RUN, "SELECT id FROM electrical.run WHERE number = ?");

    private final JdbcClient jdbc;
    private final Map<String, Long> known = new HashMap<>();

    StoredNumbers(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public long entry(String id) {
        return number("SELECT number FROM ledger.entry WHERE id = ?", id);
    }

    @Override
    public long item(String number) {
        return number("SELECT id FROM catalog.item WHERE number = ?", number);
    }

    @Override
    public long station(String code) {
        return number("SELECT id FROM catalog.station WHERE code = ?", code);
    }

    @Override
    public long position(String station, String code) {
        return number("""
                SELECT p.id FROM catalog.position p JOIN catalog.station s ON s.id = p.station
                WHERE s.code || '/' || p.code = ?
                """, station + "/" + code);
    }

    @Override
    public long definition(TraceKind run, String code) {
        return number(
                run == TraceKind.CURE_RUN
                        ? "SELECT id FROM catalog.recipe WHERE code = ?"
                        : "SELECT id FROM catalog.specification WHERE code = ?",
                code);
    }

    @Override
    public TraceRef node(TraceKind kind, String name) {
        return new TraceRef(kind, number(Objects.requireNonNull(NODES.get(kind)), name));
    }

    private long number(String sql, String name) {
        return known.computeIfAbsent(
                sql + name,
                any -> jdbc.sql(sql)
                        .param(name)
                        .query((row, count) -> row.getLong(1))
                        .single());
    }
}
