package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.walk.Starts;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Since when a node counts as a suspect: a unit from the earliest its birth can have been, all else since ever. */
public final class Births implements Starts {

    private static final String OF_UNITS = """
            SELECT b.unit, b.station, (extract(epoch FROM b.born_at) * 1000000)::bigint FROM production.birth b
            WHERE b.unit = ANY (:units) AND %s
            """.formatted(Known.at("b.entry"));

    private final JdbcClient jdbc;
    private final long cutoff;
    private final Clocks clocks;
    private final Map<TraceRef, Long> known = new HashMap<>();

    public Births(JdbcClient jdbc, long cutoff, Clocks clocks) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
        this.clocks = clocks;
    }

    @Override
    public long of(TraceRef node) {
        learn(List.of(node));
        return Objects.requireNonNull(known.get(node));
    }

    @Override
    public void learn(Collection<TraceRef> nodes) {
        List<TraceRef> missing =
                nodes.stream().filter(node -> !known.containsKey(node)).toList();
        missing.forEach(node -> known.put(node, Long.MIN_VALUE));
        Long[] units = missing.stream()
                .filter(node -> node.kind() == TraceKind.UNIT)
                .map(TraceRef::id)
                .toArray(Long[]::new);
        if (units.length > 0) {
            jdbc.sql(OF_UNITS).param("units", units).param("cutoff", cutoff).query(this::keepEarliest);
        }
    }

    private void keepEarliest(ResultSet row) throws SQLException {
        TraceRef unit = TraceRef.unit(row.getLong(1));
        long station = row.getLong(2);
        long early = clocks.told(row.wasNull() ? null : station, row.getLong(3)).early();
        known.merge(unit, early, (one, other) -> one == Long.MIN_VALUE ? other : Math.min(one, other));
    }
}
