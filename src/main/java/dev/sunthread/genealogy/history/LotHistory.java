package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.records.Blending;
import dev.sunthread.genealogy.records.LineRecords;
import dev.sunthread.genealogy.records.LotRecords;
import dev.sunthread.genealogy.records.LotSpan;
import dev.sunthread.genealogy.records.Making;
import dev.sunthread.genealogy.records.Unfilled;
import dev.sunthread.genealogy.records.Unmade;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Reads how lots and containers came to be, and how long they were in the plant, as known at a cut-off. */
final class LotHistory implements LotRecords {

    private static final String COMPONENTS = """
            SELECT m.entry, c.container, c.component, NULL::bigint, m.lot, NULL::bigint, m.way, m.station, %s
            FROM materials.lot_component c JOIN materials.lot_making m USING (entry, lot)
            WHERE (%%s) AND %s
            """.formatted(Sql.micros("m.made_at"), Known.at("m.entry"));

    private static final String FILLINGS = """
            SELECT f.entry, NULL, f.lot, NULL, NULL, f.container, 'filled', NULL, %s
            FROM materials.container_filling f WHERE (%%s) AND %s
            """.formatted(Sql.micros("f.filled_at"), Known.at("f.entry"));

    private static final String RECOVERIES = """
            SELECT r.entry, NULL, NULL, r.unit, r.lot, NULL, 'recovered', r.station, %s
            FROM production.recovery r WHERE (%%s) AND %s
            """.formatted(Sql.micros("r.recovered_at"), Known.at("r.entry"));

    private static final String FROM = String.join(
            " UNION ALL ",
            COMPONENTS.formatted("c.component = ANY (:lots) OR c.container = ANY (:containers)"),
            FILLINGS.formatted("f.lot = ANY (:lots)"),
            RECOVERIES.formatted("r.unit = ANY (:units)"));

    private static final String INTO = String.join(
            " UNION ALL ",
            COMPONENTS.formatted("m.lot = ANY (:lots)"),
            FILLINGS.formatted("f.container = ANY (:containers)"),
            RECOVERIES.formatted("r.lot = ANY (:lots)"));

    /** Whether the origin {@code o} tells only what went on top of a remainder, not where that came from. */
    private static final String TOPPED_UP = """
            EXISTS (SELECT FROM materials.lot_making m WHERE m.entry = o.entry AND m.lot = o.lot AND m.way = 'TOP_UP' AND (
              SELECT count(DISTINCT c.component) FROM materials.lot_component c
              WHERE c.entry = m.entry AND c.lot = m.lot AND c.component <> m.lot) < 2)
            """;

    /** What tells that the lot {@code l.lot} was there. */
    private static final String SIGNS = """
            SELECT o.entry, o.at, NOT %s AS is_origin FROM materials.lot_origin o WHERE o.lot = l.lot
            UNION ALL SELECT entry, charged_at, false FROM materials.charge WHERE lot = l.lot
            UNION ALL SELECT entry, discharged_at, false FROM materials.discharge
              WHERE lot = l.lot OR into_lot = l.lot
            UNION ALL SELECT u.entry, p.started_at, false
              FROM (SELECT entry FROM production.step_use WHERE lot = l.lot OFFSET 0) u CROSS JOIN LATERAL (
                SELECT started_at FROM production.step WHERE entry = u.entry OFFSET 0) p
            UNION ALL SELECT m.entry, m.made_at, false FROM materials.lot_component c
              JOIN materials.lot_making m USING (entry, lot) WHERE c.component = l.lot
            UNION ALL SELECT entry, filled_at, false FROM materials.container_filling WHERE lot = l.lot
            UNION ALL SELECT entry, installed_at, false FROM production.installation WHERE child_lot = l.lot
            UNION ALL SELECT entry, recovered_at, false FROM production.recovery WHERE lot = l.lot
            UNION ALL SELECT entry, ended_at, false FROM materials.lot_ending WHERE lot = l.lot
            UNION ALL SELECT entry, changed_at, false FROM materials.stock_change WHERE lot = l.lot AND quantity > 0
            """.formatted(TOPPED_UP);

    /** A part that is taken out proves its lot, but not that any of it was in stock then. */
    private static final String SIGNS_OR_REMOVALS = SIGNS + """
            UNION ALL SELECT entry, removed_at, false FROM production.removal WHERE child_lot = l.lot
            """;

    /**
     * Lots with the first sign of them if it is recorded where they came from, the last sign, and their end if that is
     * recorded. One that only withdrawn records name may have been there since ever.
     */
    private static final String SPANS = """
            SELECT l.lot, l.item, CASE WHEN s.has_origin THEN s.first_at END, s.last_at, (
              SELECT max(%1$s) FROM materials.lot_ending e WHERE e.lot = l.lot AND e.container IS NULL AND %2$s)
            FROM (%%s) l CROSS JOIN LATERAL (
              SELECT min(%3$s) FILTER (WHERE %4$s) AS first_at, max(%3$s) FILTER (WHERE %4$s) AS last_at,
                bool_or(t.is_origin) FILTER (WHERE %4$s) AS has_origin,
                bool_or((SELECT p.position FROM ledger.position p WHERE p.entry = t.entry) <= :cutoff) AS was_named
              FROM (%5$s) t) s
            WHERE s.was_named
            """.formatted(
                    Sql.micros("e.ended_at"), Known.at("e.entry"), Sql.micros("t.at"), Known.at("t.entry"), SIGNS);

    /** Of what the lot {@code l.id} may be by where it was: what else was at its positions, or goes into its places. */
    private static final String ITEMS_BY_PLACE = """
            SELECT u.item FROM materials.charge c JOIN production.step_use u ON u.position = c.position
              WHERE c.lot = l.id AND %1$s AND %2$s
            UNION SELECT o.item FROM materials.charge c JOIN materials.charge d ON d.position = c.position
              JOIN materials.lot_origin o ON o.lot = d.lot
              WHERE c.lot = l.id AND o.item IS NOT NULL AND %1$s AND %3$s AND %4$s
            UNION SELECT q.item FROM production.installation i JOIN production.parent_position p ON p.id = i.parent_position
              JOIN production.unit n ON n.id = p.parent JOIN catalog.structure_revision r ON r.item = n.item
              JOIN catalog.structure_position q ON q.entry = r.entry AND q.position = p.position
              WHERE i.child_lot = l.id AND %5$s AND %6$s
            """.formatted(
                    Known.at("c.entry"),
                    Known.at("u.entry"),
                    Known.at("d.entry"),
                    Known.at("o.entry"),
                    Known.at("i.entry"),
                    Known.at("r.entry"));

    private static final String MADE_OF = """
            SELECT DISTINCT o.item, NULL::bigint FROM materials.lot_origin o WHERE o.item IS NOT NULL AND %1$s
            UNION SELECT o.item, s.item FROM materials.lot_component c JOIN materials.lot_origin o ON o.lot = c.lot
              JOIN materials.lot_origin s ON s.lot = c.component
              WHERE o.item IS NOT NULL AND s.item IS NOT NULL AND %1$s AND %2$s AND %3$s
            """.formatted(Known.at("o.entry"), Known.at("c.entry"), Known.at("s.entry"));

    private static final String MIXED =
            """
            SELECT o.item FROM catalog.position_mixing_back b JOIN materials.charge c USING (position)
              JOIN materials.lot_origin o ON o.lot = c.lot WHERE o.item IS NOT NULL AND %1$s AND %2$s AND %3$s
            UNION SELECT u.item FROM catalog.position_mixing_back b JOIN production.step_use u USING (position)
              WHERE %1$s AND %4$s
            """.formatted(Known.at("b.entry"), Known.at("c.entry"), Known.at("o.entry"), Known.at("u.entry"));

    private static final String UNMADE = """
            SELECT l.id, s.first_at, coalesce((SELECT array_agg(DISTINCT k.item) FROM (
              SELECT u.item FROM production.step_use u WHERE u.lot = l.id AND %s
              UNION SELECT o.item FROM materials.lot_origin o WHERE o.lot = l.id AND o.item IS NOT NULL AND %s) k),
              (SELECT array_agg(DISTINCT k.item) FROM (%s) k))
            FROM materials.lot l CROSS JOIN LATERAL (SELECT min(%s) AS first_at FROM (%s) t WHERE %s) s
            WHERE s.first_at IS NOT NULL AND NOT EXISTS (SELECT FROM materials.lot_origin o WHERE o.lot = l.id AND NOT %s AND %s)
            """.formatted(
                    Known.at("u.entry"),
                    Known.at("o.entry"),
                    ITEMS_BY_PLACE,
                    Sql.micros("t.at"),
                    SIGNS_OR_REMOVALS.replace("l.lot", "l.id"),
                    Known.at("t.entry"),
                    TOPPED_UP,
                    Known.at("o.entry"));

    private static final String ITEMS =
            "SELECT DISTINCT o.lot, o.item FROM materials.lot_origin o WHERE o.item IS NOT NULL AND %s AND %s";

    private static final String WITHOUT_ITEM = """
            SELECT n.id, NULL FROM materials.lot n WHERE %%s AND NOT EXISTS (
              SELECT FROM materials.lot_origin o WHERE o.lot = n.id AND o.item IS NOT NULL AND %s)
            """.formatted(Known.at("o.entry"));

    private static final String BLENDS =
            """
            SELECT m.entry, m.lot, m.item, m.station, %s, (
              SELECT array_agg(DISTINCT o.item) FROM materials.lot_component c JOIN materials.lot_origin o ON o.lot = c.component
              WHERE c.entry = m.entry AND c.lot = m.lot AND o.item IS NOT NULL AND %s)
            FROM materials.lot_making m
            WHERE m.way IN ('BLEND', 'KIT') AND m.item IS NOT NULL AND (%%s) AND %s
            """.formatted(Sql.micros("m.made_at"), Known.at("o.entry"), Known.at("m.entry"));

    private final JdbcClient jdbc;
    private final long cutoff;
    private final Clocks clocks;
    private final ContainerHistory containers;

    LotHistory(JdbcClient jdbc, long cutoff, Clocks clocks, LineRecords lines) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
        this.clocks = clocks;
        this.containers = new ContainerHistory(jdbc, cutoff, clocks, lines);
    }

    @Override
    public List<Making> from(Collection<TraceRef> sources) {
        return makings(FROM, sources);
    }

    @Override
    public List<Making> into(Collection<TraceRef> targets) {
        return makings(INTO, targets);
    }

    @Override
    public List<LotSpan> spansOfItems(Collection<Long> items) {
        String lots = ITEMS.formatted("o.item = ANY (:ids)", Known.at("o.entry")) + " UNION ALL "
                + WITHOUT_ITEM.formatted("true");
        return spans(lots, items);
    }

    @Override
    public List<LotSpan> spansOf(Collection<Long> lots) {
        String asked = ITEMS.formatted("o.lot = ANY (:ids)", Known.at("o.entry")) + " UNION ALL "
                + WITHOUT_ITEM.formatted("n.id = ANY (:ids)");
        return spans(asked, lots);
    }

    @Override
    public List<Blending> blendsDemanding(Collection<Long> components) {
        return blends("""
                m.item IN (SELECT r.item FROM catalog.structure_position p JOIN catalog.structure_revision r USING (entry)
                  WHERE p.item = ANY (:ids) AND %s)
                """.formatted(Known.at("r.entry")), components);
    }

    @Override
    public List<Blending> blends(Collection<Long> lots) {
        return blends("m.lot = ANY (:ids)", lots);
    }

    @Override
    public List<Unmade> unmade() {
        return jdbc.sql(UNMADE)
                .param("cutoff", cutoff)
                .query((row, number) ->
                        new Unmade(row.getLong(1), Sql.numbers(row, 3), clocks.told(null, row.getLong(2))))
                .list();
    }

    @Override
    public List<Making> labelled() {
        return containers.labelled();
    }

    @Override
    public List<Unfilled> unfilled() {
        return containers.unfilled();
    }

    @Override
    public Map<Long, Set<Long>> madeOf() {
        Map<Long, Set<Long>> made = new HashMap<>();
        jdbc.sql(MADE_OF).param("cutoff", cutoff).query(row -> {
            Set<Long> of = made.computeIfAbsent(row.getLong(1), any -> new HashSet<>());
            Optional.ofNullable(Sql.optional(row, 2)).ifPresent(of::add);
        });
        return made;
    }

    @Override
    public Set<Long> itemsMixed() {
        return new HashSet<>(jdbc.sql(MIXED)
                .param("cutoff", cutoff)
                .query((row, number) -> row.getLong(1))
                .list());
    }

    @Override
    public Set<Long> items() {
        return new HashSet<>(jdbc.sql("SELECT DISTINCT o.item FROM materials.lot_origin o WHERE o.item IS NOT NULL AND "
                        + Known.at("o.entry"))
                .param("cutoff", cutoff)
                .query((row, number) -> row.getLong(1))
                .list());
    }

    @Override
    public Map<Long, String> unitsOfItems() {
        Map<Long, String> units = new HashMap<>();
        jdbc.sql("SELECT i.id, i.unit_of_measure FROM catalog.item i").query(row -> {
            units.put(row.getLong(1), row.getString(2));
        });
        return units;
    }

    private List<Making> makings(String sql, Collection<TraceRef> nodes) {
        Map<String, Object> params = Map.of(
                "lots", Sql.ids(nodes, TraceKind.LOT),
                "containers", Sql.ids(nodes, TraceKind.CONTAINER),
                "units", Sql.ids(nodes, TraceKind.UNIT));
        return jdbc.sql(sql)
                .params(params)
                .param("cutoff", cutoff)
                .query((row, number) -> making(row))
                .list();
    }

    private Making making(ResultSet row) throws SQLException {
        Long container = Sql.optional(row, 2);
        Long component = Sql.optional(row, 3);
        Long unit = Sql.optional(row, 4);
        Long intoContainer = Sql.optional(row, 6);
        TraceRef from = container != null
                ? TraceRef.container(container)
                : component != null ? TraceRef.lot(component) : TraceRef.unit(unit == null ? 0 : unit);
        TraceRef to = intoContainer != null ? TraceRef.container(intoContainer) : TraceRef.lot(row.getLong(5));
        return new Making(
                row.getLong(1),
                from,
                component,
                to,
                row.getString(7).toLowerCase(Locale.ROOT).replace('_', '-'),
                clocks.told(Sql.optional(row, 8), row.getLong(9)));
    }

    private List<LotSpan> spans(String lots, Collection<Long> ids) {
        return jdbc.sql(SPANS.formatted(lots))
                .param("ids", Sql.ids(ids))
                .param("cutoff", cutoff)
                .query((row, number) -> span(row))
                .list();
    }

    // one that nothing tells the origin of may have been there since ever; a sign after the recorded end speaks against
    // it
    private LotSpan span(ResultSet row) throws SQLException {
        Long first = Sql.optional(row, 3);
        Long last = Sql.optional(row, 4);
        Long ended = Sql.optional(row, 5);
        long to = ended == null || last != null && last > ended
                ? Long.MAX_VALUE
                : clocks.told(null, ended).late();
        return new LotSpan(
                row.getLong(1),
                Sql.optional(row, 2),
                first == null ? Long.MIN_VALUE : clocks.told(null, first).early(),
                to);
    }

    private List<Blending> blends(String which, Collection<Long> ids) {
        return jdbc.sql(BLENDS.formatted(which))
                .param("ids", Sql.ids(ids))
                .param("cutoff", cutoff)
                .query((row, number) -> new Blending(
                        row.getLong(1),
                        row.getLong(2),
                        row.getLong(3),
                        clocks.told(Sql.optional(row, 4), row.getLong(5)),
                        Set.copyOf(Sql.numbers(row, 6))))
                .list();
    }
}
