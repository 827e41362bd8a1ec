package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.demand.RunDemand;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.records.HappeningRecords;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Reads steps and runs that history tells at a cut-off. */
final class HappeningHistory implements HappeningRecords {

    private static final String STEPS =
            """
            SELECT s.entry, s.station, %s, %s, s.operation,
              (SELECT array_agg(su.unit) FROM production.step_unit su WHERE su.entry = s.entry)
            FROM production.step s
            WHERE s.entry IN (%%s) AND %s
            """.formatted(Sql.micros("s.started_at"), Sql.micros("s.ended_at"), Known.at("s.entry"));

    private static final String CURES =
            """
            SELECT r.entry, r.run, %1$s, %2$s, r.recipe, e.station,
              (SELECT array_agg(u.unit) FROM cure.run_unit u WHERE u.entry = r.entry),
              (SELECT array_agg(c.carrier) FROM cure.run_carrier c WHERE c.entry = r.entry)
            FROM cure.run_record r %3$s
            WHERE r.entry IN (%%s) AND %4$s
            """.formatted(Sql.micros("r.started_at"), Sql.micros("r.ended_at"), station(), Known.at("r.entry"));

    private static final String TESTS =
            """
            SELECT r.entry, r.run, %1$s, %2$s, r.specification, e.station, ARRAY[r.unit], NULL::bigint[]
            FROM electrical.run_record r %3$s
            WHERE r.entry IN (%%s) AND %4$s
            """.formatted(Sql.micros("r.started_at"), Sql.micros("r.ended_at"), station(), Known.at("r.entry"));

    private final JdbcClient jdbc;
    private final long cutoff;
    private final Clocks clocks;

    HappeningHistory(JdbcClient jdbc, long cutoff, Clocks clocks) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
        this.clocks = clocks;
    }

    @Override
    public List<Happening> naming(Collection<TraceRef> unitsAndCarriers) {
        Map<String, Object> params = Map.of(
                "units", Sql.ids(unitsAndCarriers, TraceKind.UNIT),
                "carriers", Sql.ids(unitsAndCarriers, TraceKind.CARRIER));
        List<Happening> found =
                new ArrayList<>(steps("SELECT entry FROM production.step_unit WHERE unit = ANY (:units)", params));
        found.addAll(runs(TraceKind.CURE_RUN, CURES, """
                SELECT entry FROM cure.run_unit WHERE unit = ANY (:units)
                UNION SELECT entry FROM cure.run_carrier WHERE carrier = ANY (:carriers)
                """, params));
        found.addAll(runs(
                TraceKind.TEST_RUN,
                TESTS,
                "SELECT entry FROM electrical.run_record WHERE unit = ANY (:units)",
                params));
        return found;
    }

    @Override
    public List<Happening> of(Collection<TraceRef> nodes) {
        Map<String, Object> params = Map.of(
                "steps", Sql.ids(nodes, TraceKind.STATION_STEP),
                "cures", Sql.ids(nodes, TraceKind.CURE_RUN),
                "tests", Sql.ids(nodes, TraceKind.TEST_RUN));
        List<Happening> found = new ArrayList<>(steps("SELECT unnest(:steps::bigint[])", params));
        found.addAll(
                runs(TraceKind.CURE_RUN, CURES, "SELECT entry FROM cure.run_record WHERE run = ANY (:cures)", params));
        found.addAll(runs(
                TraceKind.TEST_RUN, TESTS, "SELECT entry FROM electrical.run_record WHERE run = ANY (:tests)", params));
        return found;
    }

    @Override
    public List<Happening> under(Collection<RunDemand> demands) {
        Map<String, Object> params =
                Map.of("cures", of(demands, TraceKind.CURE_RUN), "tests", of(demands, TraceKind.TEST_RUN));
        List<Happening> found = new ArrayList<>(runs(
                TraceKind.CURE_RUN, CURES, "SELECT entry FROM cure.run_record WHERE recipe = ANY (:cures)", params));
        found.addAll(runs(
                TraceKind.TEST_RUN,
                TESTS,
                "SELECT entry FROM electrical.run_record WHERE specification = ANY (:tests)",
                params));
        return found;
    }

    private List<Happening> steps(String entries, Map<String, Object> params) {
        return jdbc.sql(STEPS.formatted(entries))
                .params(params)
                .param("cutoff", cutoff)
                .query((row, number) -> step(row))
                .list();
    }

    private Happening step(ResultSet row) throws SQLException {
        long station = row.getLong(2);
        return Happening.step(
                row.getLong(1),
                clocks.told(station, row.getLong(3)),
                clocks.told(station, row.getLong(4)),
                units(row, 6),
                row.getString(5),
                inOrder(station, row.getLong(3)));
    }

    private List<Happening> runs(TraceKind kind, String sql, String entries, Map<String, Object> params) {
        return jdbc.sql(sql.formatted(entries))
                .params(params)
                .param("cutoff", cutoff)
                .query((row, number) -> run(kind, row))
                .list();
    }

    private Happening run(TraceKind kind, ResultSet row) throws SQLException {
        Long station = Sql.optional(row, 6);
        return new Happening(
                new TraceRef(kind, row.getLong(2)),
                row.getLong(1),
                clocks.told(station, row.getLong(3)),
                clocks.told(station, row.getLong(4)),
                units(row, 7),
                Sql.numbers(row, 8).stream().map(TraceRef::carrier).collect(Collectors.toSet()),
                null,
                new RunDemand(kind, row.getLong(5)),
                inOrder(station, row.getLong(3)));
    }

    // times that are not proven are in no order, whichever clock told them
    private @Nullable Long inOrder(@Nullable Long station, long start) {
        return station == null || clocks.isProven(station, start) ? station : null;
    }

    private static Set<TraceRef> units(ResultSet row, int column) throws SQLException {
        return Sql.numbers(row, column).stream().map(TraceRef::unit).collect(Collectors.toSet());
    }

    private static Long[] of(Collection<RunDemand> demands, TraceKind run) {
        return demands.stream()
                .filter(demand -> demand.run() == run)
                .map(RunDemand::definition)
                .toArray(Long[]::new);
    }

    /** The station at which the equipment stood by its revision in force at the start. */
    private static String station() {
        return """
                LEFT JOIN LATERAL (
                  SELECT q.station FROM catalog.equipment_revision q
                  WHERE q.equipment = r.equipment AND q.effective_at <= r.started_at AND %s
                  ORDER BY q.effective_at DESC, q.entry DESC LIMIT 1) e ON true
                """.formatted(Known.at("q.entry"));
    }
}
