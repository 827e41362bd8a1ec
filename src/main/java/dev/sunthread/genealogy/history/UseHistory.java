package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.line.LineDoubts;
import dev.sunthread.genealogy.position.Changes;
import dev.sunthread.genealogy.position.PositionTimeline;
import dev.sunthread.genealogy.records.LineRecords;
import dev.sunthread.genealogy.records.OpenLine;
import dev.sunthread.genealogy.records.RecordedUse;
import dev.sunthread.genealogy.records.StationPosition;
import dev.sunthread.genealogy.records.UseRecords;
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
import java.util.Optional;
import java.util.Set;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Reads the uses that history tells at a cut-off, and the positions they may have drawn from. */
final class UseHistory implements UseRecords {

    private static final String USES = """
            SELECT u.entry, u.item, coalesce(u.lot, (
              SELECT f.lot FROM materials.container_filling f
              WHERE f.container = u.container AND f.filled_at <= s.ended_at AND %s AND %s
              ORDER BY f.filled_at DESC, f.entry DESC LIMIT 1)) AS lot, u.container, u.position, s.station, st.code, s.operation, %s, %s, NULL::bigint
            FROM (%%s) asked
            JOIN production.step_use u USING (entry, ordinal)
            JOIN production.step s USING (entry) JOIN catalog.station st ON st.id = s.station
            WHERE %s
            """.formatted(
                    Known.at("f.entry"),
                    Sql.HELD_SURELY,
                    Sql.micros("s.started_at"),
                    Sql.micros("s.ended_at"),
                    Known.at("u.entry"));

    private static final String UNLOADINGS = """
            SELECT d.entry, NULL::bigint, d.lot, NULL::bigint, d.position, p.station, st.code, 'unloading', %1$s, %1$s, d.into_lot
            FROM materials.discharge d
            JOIN catalog.position p ON p.id = d.position JOIN catalog.station st ON st.id = p.station
            WHERE d.into_lot IS NOT NULL AND (%%s) AND %2$s
            """.formatted(Sql.micros("d.discharged_at"), Known.at("d.entry"));

    private static final String HELD = """
            SELECT p.id, p.station, p.code, s.code AS station_code
            FROM (SELECT position FROM materials.charge WHERE lot = ANY (:ids)
                  UNION SELECT position FROM materials.discharge WHERE lot = ANY (:ids)
                  UNION SELECT position FROM production.step_use WHERE lot = ANY (:ids)
                  UNION SELECT position FROM production.step_use WHERE lot IS NULL AND container IN (
                    SELECT container FROM materials.container_filling WHERE lot = ANY (:ids))) held
            JOIN catalog.position p ON p.id = held.position JOIN catalog.station s ON s.id = p.station
            """;

    /** Uses that name a lot or one of the positions, or no position of the stations. */
    private static final String OF_LOTS = """
            SELECT entry, ordinal FROM production.step_use WHERE lot = ANY (:lots)
            UNION
            SELECT entry, ordinal FROM production.step_use WHERE container = ANY (:containers)
            UNION
            SELECT entry, ordinal FROM production.step_use WHERE position = ANY (:positions)
            UNION
            SELECT u.entry, u.ordinal FROM production.step_use u JOIN production.step s USING (entry)
            WHERE u.position IS NULL AND s.station = ANY (:stations)
            """;

    private static final String OF_LOTS_OF_ANY_ITEM = USES.formatted(OF_LOTS);

    /** Where no position is named, the item tells whether it can have come from one of these. */
    private static final String OF_LOTS_OF_ITEMS = USES.formatted(OF_LOTS + " AND u.item = ANY (:items)");

    /**
     * Uses without a scan at a position while no charge of these items is told for it, uses of no position, and uses with
     * a scan during whose step what was loaded changed. State finds them by time; history says what counts. The clock may
     * have told the use and the change each wrongly, so both count; in a spell of times that are not proven every use does.
     */
    private static final String WHERE_NOTHING_MAY_BE_LOADED =
            """
            WITH wanted AS (
              SELECT i.item FROM unnest(:items::bigint[]) AS i(item)
              WHERE (SELECT x.item FROM production.unscanned_use x WHERE x.item = i.item LIMIT 1) IS NOT NULL),
            change AS (
              SELECT w.item, c.position, c.charged_at AS at, coalesce((
                SELECT bool_or(o.item = w.item) FROM materials.lot_origin o WHERE o.lot = c.lot AND %1$s), true) AS covers
              FROM wanted w CROSS JOIN materials.charge c WHERE %2$s AND c.entry <> ALL (:takenBack)
              UNION ALL
              SELECT w.item, d.position, d.discharged_at, false FROM wanted w CROSS JOIN materials.discharge d WHERE %3$s
              UNION ALL
              SELECT w.item, k.position, k.at::timestamptz, false
              FROM wanted w CROSS JOIN unnest(:doubtful::bigint[], :doubted::text[]) k(position, at)),
            bare AS (
              SELECT item, position, '-infinity'::timestamptz AS since, min(at) AS until FROM change GROUP BY item, position
              UNION ALL
              SELECT item, position, at, until FROM (
                SELECT *, lead(at) OVER (PARTITION BY item, position ORDER BY at, covers DESC) AS until FROM change) g
              WHERE NOT covers
              UNION ALL
              SELECT w.item, k.position, '-infinity', 'infinity' FROM wanted w CROSS JOIN unnest(:undated::bigint[]) k(position)
              UNION ALL
              SELECT w.item, p.id, '-infinity', 'infinity' FROM wanted w CROSS JOIN catalog.position p
              WHERE p.id NOT IN (SELECT position FROM change))
            SELECT u.entry, u.ordinal FROM bare g CROSS JOIN LATERAL (
              SELECT * FROM production.unscanned_use
              WHERE int8range(position, position, '[]') && int8range(g.position, g.position, '[]')
                AND int8range(item, item, '[]') && int8range(g.item, g.item, '[]')
                AND during && tstzrange(g.since - make_interval(secs => 2 * :worst),
                  coalesce(g.until, 'infinity') + make_interval(secs => 2 * :worst), '[]') OFFSET 0) u
            UNION
            SELECT entry, ordinal FROM production.step_use
            WHERE position IS NULL AND lot IS NULL AND item = ANY (:items)
            UNION
            SELECT u.entry, u.ordinal FROM (SELECT position, discharged_at AS at FROM materials.discharge
              UNION ALL SELECT position, charged_at FROM materials.charge) d JOIN catalog.position p ON p.id = d.position
            CROSS JOIN LATERAL (
              SELECT max(w.ended_at - w.started_at) AS longest FROM production.step w WHERE w.station = p.station) l
            CROSS JOIN LATERAL (
              SELECT s.entry FROM production.step s
              WHERE s.station = p.station AND s.ended_at > s.started_at
                AND s.started_at < d.at
                AND s.started_at >= d.at - l.longest
                AND s.ended_at > d.at OFFSET 0) s
            CROSS JOIN LATERAL (
              SELECT * FROM production.step_use WHERE entry = s.entry OFFSET 0) u
            WHERE u.lot IS NOT NULL AND coalesce(u.position, d.position) = d.position AND u.item = ANY (:items)
            UNION
            SELECT u.entry, u.ordinal FROM quality.unproven_time x JOIN catalog.position p ON p.station = x.station
            CROSS JOIN LATERAL (
              SELECT * FROM production.unscanned_use
              WHERE int8range(position, position, '[]') && int8range(p.id, p.id, '[]')
                AND during && tstzrange(x.since - make_interval(secs => 2 * :worst),
                  x.until + make_interval(secs => 2 * :worst), '[]') OFFSET 0) u
            WHERE u.item = ANY (:items) AND %4$s
            UNION
            SELECT u.entry, u.ordinal FROM quality.unproven_time x JOIN production.step s ON s.station = x.station
              AND s.started_at <= x.until + make_interval(secs => 2 * :worst)
              AND s.ended_at >= x.since - make_interval(secs => 2 * :worst)
            JOIN production.step_use u ON u.entry = s.entry
            WHERE u.lot IS NOT NULL AND u.item = ANY (:items) AND %4$s
            """.formatted(Known.at("o.entry"), Known.at("c.entry"), Known.at("d.entry"), Known.at("x.entry"));

    /** What came off and is of no charge: the change before it put nothing on. */
    private static final String UNLOADED_OF_NO_RECORD =
            """
            WITH change AS (
              SELECT c.position, c.charged_at AS at, 0 AS off, false AS nameless FROM materials.charge c
              WHERE %1$s AND c.entry <> ALL (:takenBack)
              UNION ALL
              SELECT d.position, d.discharged_at, 1, d.lot IS NULL FROM materials.discharge d WHERE %2$s)
            SELECT DISTINCT o.position FROM (
              SELECT *, lag(off) OVER (PARTITION BY position ORDER BY at, off) AS before FROM change) o
            WHERE o.nameless AND (o.before IS DISTINCT FROM 0 OR EXISTS (
              SELECT FROM quality.unproven_time x JOIN catalog.position p ON p.station = x.station
              WHERE p.id = o.position AND %3$s))
            AND EXISTS (
              SELECT FROM production.step_use u WHERE u.position = o.position AND u.item = ANY (:items))
            """.formatted(Known.at("c.entry"), Known.at("d.entry"), Known.at("x.entry"));

    /** Of each item the first such use that is known ends the search. */
    private static final String ITEMS_UNSCANNED = """
            SELECT i.id FROM catalog.item i WHERE EXISTS (
              SELECT FROM production.step_use u WHERE u.item = i.id AND u.lot IS NULL AND %s)
            """.formatted(Known.at("u.entry"));

    private static final RowMapper<StationPosition> POSITION = DataClassRowMapper.newInstance(StationPosition.class);

    private final JdbcClient jdbc;
    private final long cutoff;
    private final Clocks clocks;
    private final LineRecords lines;
    private final PositionHistory history;
    private final Map<Long, List<StationPosition>> positions = new HashMap<>();

    UseHistory(JdbcClient jdbc, long cutoff, Clocks clocks, LineRecords lines) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
        this.clocks = clocks;
        this.lines = lines;
        this.history = new PositionHistory(jdbc, cutoff, clocks, lines);
    }

    @Override
    public List<RecordedUse> in(Collection<TraceRef> steps) {
        return read(
                USES.formatted("SELECT entry, ordinal FROM production.step_use WHERE entry = ANY (:steps)"),
                Map.of("steps", Sql.ids(steps, TraceKind.STATION_STEP)));
    }

    @Override
    public List<RecordedUse> thatMayHaveTaken(
            Collection<TraceRef> material, Collection<StationPosition> held, Optional<Set<Long>> items) {
        Map<String, Object> params = Map.of(
                "lots", Sql.ids(material, TraceKind.LOT),
                "containers", Sql.ids(material, TraceKind.CONTAINER),
                "positions", held.stream().map(StationPosition::id).toArray(Long[]::new),
                "stations", held.stream().map(StationPosition::station).toArray(Long[]::new),
                "items", Sql.ids(items.orElse(Set.of())));
        List<RecordedUse> uses =
                new ArrayList<>(read(items.isPresent() ? OF_LOTS_OF_ITEMS : OF_LOTS_OF_ANY_ITEM, params));
        uses.addAll(read(UNLOADINGS.formatted("d.position = ANY (:positions)"), params));
        return uses;
    }

    @Override
    public List<RecordedUse> unloadedInto(Collection<Long> lots) {
        return read(UNLOADINGS.formatted("d.into_lot = ANY (:lots)"), Map.of("lots", Sql.ids(lots)));
    }

    // found first and read then, for most often there are none
    @Override
    public List<RecordedUse> unscanned(Collection<Long> items) {
        List<Long> entries = new ArrayList<>();
        List<Integer> ordinals = new ArrayList<>();
        jdbc.sql(WHERE_NOTHING_MAY_BE_LOADED)
                .param("items", Sql.ids(items))
                .params(doubts())
                .param("worst", (clocks.worst().toMillis() + 1) / 1000.0)
                .param("cutoff", cutoff)
                .query(row -> {
                    entries.add(row.getLong(1));
                    ordinals.add(row.getInt(2));
                });
        return entries.isEmpty()
                ? List.of()
                : read(
                        USES.formatted(
                                "SELECT * FROM unnest(:entries::bigint[], :ordinals::integer[]) AS x(entry, ordinal)"),
                        Map.of(
                                "entries", entries.toArray(Long[]::new),
                                "ordinals", ordinals.toArray(Integer[]::new)));
    }

    // what came off by no record that is certain leaves what is used then in doubt
    private Map<String, Object> doubts() {
        List<Long> positions = new ArrayList<>();
        List<String> moments = new ArrayList<>();
        for (OpenLine line : lines.open()) {
            line.positions().forEach(spot -> {
                positions.add(spot.position());
                moments.add(Clocks.time(line.at().early()).toString());
            });
        }
        return Map.of(
                "undated",
                lines.open().stream()
                        .filter(line -> line.at().late() == Long.MAX_VALUE)
                        .flatMap(line -> line.positions().stream())
                        .map(OpenLine.Spot::position)
                        .toArray(Long[]::new),
                "doubtful",
                positions.toArray(Long[]::new),
                "doubted",
                moments.toArray(String[]::new),
                "takenBack",
                LineDoubts.takenBack(lines.open()).toArray(Long[]::new));
    }

    @Override
    public Set<Long> itemsUnscanned() {
        return new HashSet<>(jdbc.sql(ITEMS_UNSCANNED)
                .param("cutoff", cutoff)
                .query((row, number) -> row.getLong(1))
                .list());
    }

    @Override
    public List<RecordedUse> at(Collection<Long> positions) {
        return read(
                USES.formatted("SELECT entry, ordinal FROM production.step_use WHERE position = ANY (:positions)"),
                Map.of("positions", Sql.ids(positions)));
    }

    @Override
    public List<StationPosition> positionsOf(long station) {
        return positions.computeIfAbsent(station, any -> positions("s.id", List.of(station)));
    }

    @Override
    public List<StationPosition> positions(Collection<Long> numbers) {
        return positions("p.id", numbers);
    }

    private List<StationPosition> positions(String column, Collection<Long> ids) {
        return jdbc.sql("""
                        SELECT p.id, p.station, p.code, s.code AS station_code
                        FROM catalog.position p JOIN catalog.station s ON s.id = p.station
                        WHERE %s = ANY (:ids) AND %s ORDER BY p.id
                        """.formatted(column, Known.named("p")))
                .param("cutoff", cutoff)
                .param("ids", Sql.ids(ids))
                .query(POSITION)
                .list();
    }

    @Override
    public List<StationPosition> positionsThatHeld(Collection<Long> lots) {
        List<StationPosition> held = new ArrayList<>(
                jdbc.sql(HELD).param("ids", Sql.ids(lots)).query(POSITION).list());
        Set<Long> told = LineDoubts.positionsOf(lines.open(), Set.copyOf(lots));
        if (!told.isEmpty()) {
            held.addAll(positions(told));
        }
        return held.stream().distinct().toList();
    }

    @Override
    public List<StationPosition> unloadedOfNoRecord(Collection<Long> items) {
        return positions(jdbc.sql(UNLOADED_OF_NO_RECORD)
                .param("items", Sql.ids(items))
                .param("takenBack", Sql.ids(LineDoubts.takenBack(lines.open())))
                .param("cutoff", cutoff)
                .query((row, number) -> row.getLong(1))
                .list());
    }

    @Override
    public Changes changes(StationPosition position) {
        return history.changes(position);
    }

    @Override
    public PositionTimeline timeline(StationPosition position) {
        return history.timeline(position);
    }

    private List<RecordedUse> read(String sql, Map<String, Object> params) {
        return jdbc.sql(sql)
                .params(params)
                .param("cutoff", cutoff)
                .query((row, number) -> use(row))
                .list();
    }

    private RecordedUse use(ResultSet row) throws SQLException {
        long station = row.getLong(6);
        long ended = row.getLong(10);
        return new RecordedUse(
                row.getLong(1),
                Sql.optional(row, 2),
                Sql.optional(row, 3),
                Sql.optional(row, 4),
                Sql.optional(row, 5),
                station,
                row.getString(7),
                row.getString(8),
                clocks.told(station, row.getLong(9), ended),
                ended,
                Sql.optional(row, 11));
    }
}
