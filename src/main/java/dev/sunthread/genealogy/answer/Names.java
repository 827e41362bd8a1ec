package dev.sunthread.genealogy.answer;

import dev.sunthread.genealogy.history.Clocks;
import dev.sunthread.genealogy.history.HistoryRecords;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Looks up what people call the nodes of an answer. */
final class Names {

    private static final String UNITS = """
            SELECT u.id, 'UNIT', i.level, i.number, u.serial, u.issuer
            FROM production.unit u JOIN catalog.item i ON i.id = u.item WHERE u.id = ANY (:ids)
            """;

    private static final String LOTS = """
            SELECT l.id, 'LOT', 'lot', coalesce((
              SELECT min(i.number) FROM materials.lot_origin r JOIN catalog.item i ON i.id = r.item
              WHERE r.lot = l.id AND %s), ''), l.number, NULL
            FROM materials.lot l WHERE l.id = ANY (:ids)
            """.formatted(Known.at("r.entry"));

    private static final String CONTAINERS = """
            SELECT c.id, 'CONTAINER', 'container', coalesce((
              SELECT min(l.number) FROM materials.container_filling f JOIN materials.lot l ON l.id = f.lot
              WHERE f.container = c.id AND %s), ''), c.label, NULL
            FROM materials.container c WHERE c.id = ANY (:ids)
            """.formatted(Known.at("f.entry"));

    private static final String CURES = """
            SELECT r.id, 'CURE_RUN', 'cure run', coalesce((
              SELECT min(c.code) FROM cure.run_record x JOIN catalog.recipe c ON c.id = x.recipe
              WHERE x.run = r.id AND %s), ''), r.number, NULL
            FROM cure.run r WHERE r.id = ANY (:ids)
            """.formatted(Known.at("x.entry"));

    private static final String TESTS = """
            SELECT r.id, 'TEST_RUN', 'test run', coalesce((
              SELECT min(c.code) FROM electrical.run_record x JOIN catalog.specification c ON c.id = x.specification
              WHERE x.run = r.id AND %s), ''), r.number, NULL
            FROM electrical.run r WHERE r.id = ANY (:ids)
            """.formatted(Known.at("x.entry"));

    private static final String STEPS = """
            SELECT s.entry, 'STATION_STEP', 'step', s.operation, e.id, NULL
            FROM production.step s JOIN ledger.entry e ON e.number = s.entry WHERE s.entry = ANY (:ids)
            """;

    private static final String LINES = """
            SELECT l.entry, 'KEPT_LINE', 'kept line', l.file, e.id, NULL
            FROM inbox.line l JOIN ledger.entry e ON e.number = l.entry WHERE l.entry = ANY (:ids)
            """;

    private final JdbcClient jdbc;
    private final long cutoff;
    private final Map<TraceRef, Named> known = new HashMap<>();
    private @Nullable Map<TraceRef, String> strangers;

    Names(JdbcClient jdbc, long cutoff) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
    }

    /** Makes sure that all these can be named. */
    void learn(Collection<TraceRef> nodes) {
        learn(nodes, TraceKind.UNIT, UNITS);
        learn(nodes, TraceKind.LOT, LOTS);
        learn(nodes, TraceKind.CONTAINER, CONTAINERS);
        learn(nodes, TraceKind.CURE_RUN, CURES);
        learn(nodes, TraceKind.TEST_RUN, TESTS);
        learn(nodes, TraceKind.STATION_STEP, STEPS);
        learn(nodes, TraceKind.KEPT_LINE, LINES);
    }

    Named of(TraceRef node) {
        if (node.id() < 0) {
            return stranger(node);
        }
        if (!known.containsKey(node)) {
            learn(List.of(node));
        }
        return known.getOrDefault(node, new Named(node.kind().name(), "unknown", "", "?", null));
    }

    /** What nothing but a kept line names. */
    private Named stranger(TraceRef node) {
        if (strangers == null) {
            strangers =
                    HistoryRecords.lines(jdbc, cutoff, new Clocks(jdbc, cutoff)).strangers();
        }
        String kind = node.kind().name();
        String level = kind.toLowerCase(Locale.ROOT).replace('_', ' ');
        return new Named(kind, level, "", strangers.getOrDefault(node, "?"), null);
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
