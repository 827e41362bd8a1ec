package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.demand.Deviation;
import dev.sunthread.genealogy.demand.RouteRevision;
import dev.sunthread.genealogy.demand.RunDemand;
import dev.sunthread.genealogy.demand.StructureRevision;
import dev.sunthread.genealogy.records.DemandRecords;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Reads what routes and structures released by a cut-off demand, and what deviations say. */
final class DemandHistory implements DemandRecords {

    private static final String OPERATIONS = """
            SELECT r.entry, r.item, %s, o.sequence, o.operation, o.unit_alone
            FROM catalog.route_revision r JOIN catalog.route_operation o USING (entry)
            WHERE r.item = ANY (:items) AND %s ORDER BY r.entry, o.sequence
            """.formatted(Sql.micros("r.effective_at"), Known.at("r.entry"));

    private static final String CONSUMPTIONS = """
            SELECT c.entry, c.operation, c.item, a.alternate
            FROM catalog.route_revision r JOIN catalog.route_consumption c USING (entry)
            LEFT JOIN catalog.route_alternate a ON a.entry = c.entry AND a.operation = c.operation AND a.item = c.item
            WHERE r.item = ANY (:items)
            """;

    private static final String DEMANDS = """
            SELECT d.entry, d.operation, d.recipe, d.specification
            FROM catalog.route_revision r JOIN catalog.route_demand d USING (entry) WHERE r.item = ANY (:items)
            """;

    private static final String POSITIONS = """
            SELECT r.entry, r.item, %s, p.position, array_agg(p.item)
            FROM catalog.structure_revision r JOIN catalog.structure_position p USING (entry)
            WHERE r.item = ANY (:items) AND %s GROUP BY r.entry, p.position ORDER BY r.entry
            """.formatted(Sql.micros("r.effective_at"), Known.at("r.entry"));

    private static final String DEMANDING = """
            SELECT r.item FROM catalog.route_consumption c JOIN catalog.route_revision r USING (entry)
            WHERE c.item = ANY (:items) AND %1$s
            UNION SELECT r.item FROM catalog.route_alternate a JOIN catalog.route_revision r USING (entry)
            WHERE a.alternate = ANY (:items) AND %1$s
            UNION SELECT r.item FROM catalog.structure_position p JOIN catalog.structure_revision r USING (entry)
            WHERE p.item = ANY (:items) AND %1$s
            """.formatted(Known.at("r.entry"));

    private static final String DEMANDED = """
            SELECT c.item FROM catalog.route_consumption c WHERE %s
            UNION SELECT a.alternate FROM catalog.route_alternate a WHERE %s
            UNION SELECT p.item FROM catalog.structure_position p WHERE %s
            """.formatted(Known.at("c.entry"), Known.at("a.entry"), Known.at("p.entry"));

    private static final String FORMULAS = """
            SELECT %%s FROM catalog.structure_position p JOIN catalog.structure_revision r USING (entry)
            JOIN catalog.item i ON i.id = r.item AND i.tracking = 'LOT'
            WHERE %%s = ANY (:items) AND %s
            """.formatted(Known.at("r.entry"));

    private static final String ALTERNATES = """
            SELECT a.alternate FROM catalog.route_alternate a WHERE a.item = ANY (:items) AND %1$s
            UNION SELECT a.item FROM catalog.route_alternate a WHERE a.alternate = ANY (:items) AND %1$s
            UNION SELECT q.item FROM catalog.structure_position p JOIN catalog.structure_position q USING (entry, position)
              WHERE p.item = ANY (:items) AND %2$s
            """.formatted(Known.at("a.entry"), Known.at("p.entry"));

    private static final String DEVIATIONS = """
            SELECT d.unit, d.lot, d.operation, d.position, d.item, d.recipe, d.specification FROM quality.deviation d
            WHERE (d.unit = ANY (:units) OR d.lot = ANY (:lots)) AND %s
            """.formatted(Known.at("d.entry"));

    private record OperationKey(long entry, String operation) {}

    private final JdbcClient jdbc;
    private final long cutoff;

    DemandHistory(JdbcClient jdbc, long cutoff) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
    }

    @Override
    public List<RouteRevision> routes(Collection<Long> items) {
        Map<OperationKey, Map<Long, Set<Long>>> consumes = new HashMap<>();
        each(CONSUMPTIONS, items, row -> {
            Set<Long> accepted = consumes.computeIfAbsent(
                            new OperationKey(row.getLong(1), row.getString(2)), any -> new HashMap<>())
                    .computeIfAbsent(row.getLong(3), item -> new HashSet<>(Set.of(item)));
            Long alternate = Sql.optional(row, 4);
            if (alternate != null) {
                accepted.add(alternate);
            }
        });
        Map<OperationKey, Set<RunDemand>> demands = new HashMap<>();
        each(
                DEMANDS,
                items,
                row -> demands.computeIfAbsent(
                                new OperationKey(row.getLong(1), row.getString(2)), any -> new HashSet<>())
                        .add(demand(row, 3)));
        Map<Long, RouteRevision> routes = new HashMap<>();
        each(OPERATIONS, items, row -> {
            RouteRevision route = routes.computeIfAbsent(row.getLong(1), entry -> route(row, entry));
            OperationKey key = new OperationKey(row.getLong(1), row.getString(5));
            route.operations()
                    .add(new RouteRevision.Operation(
                            row.getInt(4),
                            row.getString(5),
                            row.getBoolean(6),
                            consumes.getOrDefault(key, Map.of()),
                            demands.getOrDefault(key, Set.of())));
        });
        return List.copyOf(routes.values());
    }

    private static RouteRevision route(ResultSet row, long entry) {
        try {
            return new RouteRevision(entry, row.getLong(2), row.getLong(3), new ArrayList<>());
        } catch (SQLException e) {
            throw new IllegalStateException("A route cannot be read", e);
        }
    }

    @Override
    public List<StructureRevision> structures(Collection<Long> items) {
        Map<Long, StructureRevision> structures = new HashMap<>();
        each(POSITIONS, items, row -> {
            long item = row.getLong(2);
            long effective = row.getLong(3);
            structures
                    .computeIfAbsent(
                            row.getLong(1), entry -> new StructureRevision(entry, item, effective, new HashMap<>()))
                    .positions()
                    .put(row.getString(4), Sql.numbers(row, 5));
        });
        return List.copyOf(structures.values());
    }

    @Override
    public Set<Long> demanding(Collection<Long> items) {
        return items(DEMANDING, items);
    }

    @Override
    public Set<Long> mixedOf(Collection<Long> components) {
        return items(FORMULAS.formatted("r.item", "p.item"), components);
    }

    @Override
    public Set<Long> componentsOf(Collection<Long> items) {
        return items(FORMULAS.formatted("p.item", "r.item"), items);
    }

    @Override
    public Set<Long> alternatesOf(Collection<Long> items) {
        Set<Long> all = items(ALTERNATES, items);
        all.addAll(items);
        return all;
    }

    private Set<Long> items(String sql, Collection<Long> items) {
        Set<Long> found = new HashSet<>();
        each(sql, items, row -> found.add(row.getLong(1)));
        return found;
    }

    @Override
    public Set<Long> demandingRuns(Collection<RunDemand> demands) {
        return new HashSet<>(jdbc.sql("""
                        SELECT r.item FROM catalog.route_demand d JOIN catalog.route_revision r USING (entry)
                        WHERE (d.recipe = ANY (:recipes) OR d.specification = ANY (:specifications)) AND %s
                        """.formatted(Known.at("r.entry")))
                .param("cutoff", cutoff)
                .param("recipes", of(demands, TraceKind.CURE_RUN))
                .param("specifications", of(demands, TraceKind.TEST_RUN))
                .query((row, number) -> row.getLong(1))
                .list());
    }

    @Override
    public List<RouteRevision> actingAlone() {
        List<Long> items = jdbc.sql("""
                        SELECT DISTINCT r.item FROM catalog.route_operation o JOIN catalog.route_revision r USING (entry)
                        WHERE o.unit_alone AND %s
                        """.formatted(Known.at("r.entry")))
                .param("cutoff", cutoff)
                .query((row, number) -> row.getLong(1))
                .list();
        return items.isEmpty() ? List.of() : routes(items);
    }

    @Override
    public Set<Long> demandedItems() {
        return new HashSet<>(jdbc.sql(DEMANDED)
                .param("cutoff", cutoff)
                .query((row, number) -> row.getLong(1))
                .list());
    }

    @Override
    public List<Deviation> deviations(Collection<TraceRef> nodes) {
        return jdbc.sql(DEVIATIONS)
                .param("units", Sql.ids(nodes, TraceKind.UNIT))
                .param("lots", Sql.ids(nodes, TraceKind.LOT))
                .param("cutoff", cutoff)
                .query((row, number) -> deviation(row))
                .list();
    }

    private static Deviation deviation(ResultSet row) throws SQLException {
        Long unit = Sql.optional(row, 1);
        Long item = Sql.optional(row, 5);
        return new Deviation(
                unit == null ? TraceRef.lot(row.getLong(2)) : TraceRef.unit(unit),
                row.getString(3),
                row.getString(4),
                item,
                item == null ? demand(row, 6) : null);
    }

    private static RunDemand demand(ResultSet row, int column) throws SQLException {
        Long recipe = Sql.optional(row, column);
        return recipe == null ? RunDemand.specification(row.getLong(column + 1)) : RunDemand.recipe(recipe);
    }

    private static Long[] of(Collection<RunDemand> demands, TraceKind run) {
        return demands.stream()
                .filter(demand -> demand.run() == run)
                .map(RunDemand::definition)
                .toArray(Long[]::new);
    }

    private void each(String sql, Collection<Long> items, org.springframework.jdbc.core.RowCallbackHandler row) {
        if (!items.isEmpty()) {
            jdbc.sql(sql).param("items", Sql.ids(items)).param("cutoff", cutoff).query(row);
        }
    }
}
