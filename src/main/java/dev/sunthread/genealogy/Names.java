package dev.sunthread.genealogy;

import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Looks up what people call the nodes of an answer. */
final class Names {

    private static final String UNITS = """
            SELECT u.id, 'UNIT', i.level, i.number, u.serial, u.issuer
            FROM production.unit u JOIN catalog.item i ON i.id = u.item WHERE u.id = ANY (:ids)
            """;

    private static final String LOTS = """
            SELECT l.id, 'LOT', 'lot', coalesce((
              SELECT min(i.number) FROM materials.receipt r JOIN catalog.item i ON i.id = r.item
              WHERE r.lot = l.id AND %s), ''), l.number, NULL
            FROM materials.lot l WHERE l.id = ANY (:ids)
            """.formatted(Known.at("r.entry"));

    private final JdbcClient jdbc;
    private final long cutoff;
    private final Map<TraceRef, Named> known = new HashMap<>();

    Names(JdbcClient jdbc, long cutoff) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
    }

    /** Makes sure that all these can be named. */
    void learn(Collection<TraceRef> nodes) {
        learn(nodes, TraceKind.UNIT, UNITS);
        learn(nodes, TraceKind.LOT, LOTS);
    }

    Named of(TraceRef node) {
        if (!known.containsKey(node)) {
            learn(List.of(node));
        }
        return known.getOrDefault(node, new Named(node.kind().name(), "unknown", "", "?", null));
    }

    private void learn(Collection<TraceRef> nodes, TraceKind kind, String sql) {
        Set<Long> missing = nodes.stream()
                .filter(node -> node.kind() == kind && !known.containsKey(node))
                .map(TraceRef::id)
                .collect(Collectors.toSet());
        if (missing.isEmpty()) {
            return;
        }
        jdbc.sql(sql)
                .param("ids", missing.toArray(Long[]::new))
                .param("cutoff", cutoff)
                .query(row -> {
                    known.put(
                            new TraceRef(kind, row.getLong(1)),
                            new Named(
                                    row.getString(2),
                                    row.getString(3),
                                    row.getString(4),
                                    row.getString(5),
                                    row.getString(6)));
                });
    }
}
