package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.line.LineDoubts;
import dev.sunthread.genealogy.position.CarryOverLimits;
import dev.sunthread.genealogy.position.Change.Charge;
import dev.sunthread.genealogy.position.Change.Discharge;
import dev.sunthread.genealogy.position.Changes;
import dev.sunthread.genealogy.position.PositionTimeline;
import dev.sunthread.genealogy.position.Use;
import dev.sunthread.genealogy.records.LineRecords;
import dev.sunthread.genealogy.records.StationPosition;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Reads what the history of a position tells at a cut-off; each position once. */
final class PositionHistory {

    /** The item of a lot if its receipts agree; otherwise nothing, which excludes no use. */
    private static final String CHARGES =
            """
            SELECT c.entry, c.lot, %s AS instant,
              (SELECT CASE WHEN count(DISTINCT r.item) = 1 THEN min(r.item) END
               FROM materials.lot_origin r WHERE r.lot = c.lot AND %s) AS item
            FROM materials.charge c WHERE c.position = :position AND %s
            """.formatted(Sql.micros("c.charged_at"), Known.at("r.entry"), Known.at("c.entry"));

    private static final String ITEM = """
            SELECT min(r.item) FROM materials.lot_origin r WHERE r.lot = :lot AND %s
            HAVING count(DISTINCT r.item) = 1
            """.formatted(Known.at("r.entry"));

    private static final String DISCHARGES =
            "SELECT d.entry, d.lot, %s AS instant, NULL::bigint AS item FROM materials.discharge d"
                            .formatted(Sql.micros("d.discharged_at"))
                    + " WHERE d.position = :position AND " + Known.at("d.entry");

    private static final String CLEAN_POINTS =
            "SELECT %s, p.entry FROM materials.clean_point p WHERE p.position = :position AND %s"
                    .formatted(Sql.micros("p.cleaned_at"), Known.at("p.entry"));

    private static final String USES = """
            SELECT %s, %s, u.item, coalesce(u.lot, (
              SELECT f.lot FROM materials.container_filling f
              WHERE f.container = u.container AND f.filled_at <= s.ended_at AND %s AND %s
              ORDER BY f.filled_at DESC, f.entry DESC LIMIT 1))
            FROM production.step_use u JOIN production.step s USING (entry) WHERE u.position = :position AND %s
            """.formatted(
                    Sql.micros("s.started_at"),
                    Sql.micros("s.ended_at"),
                    Known.at("f.entry"),
                    Sql.HELD_SURELY,
                    Known.at("u.entry"));

    /** One moment for each set of units that was worked on, the last one: a record of a use may be doubled. */
    private static final String CYCLES =
            """
            SELECT max(start), max("end") FROM (
              SELECT %s AS start, %s AS "end",
                (SELECT array_agg(w.unit ORDER BY w.unit) FROM production.step_unit w WHERE w.entry = u.entry) AS units
              FROM production.step_use u JOIN production.step s USING (entry)
              WHERE u.position = :position AND %s) used
            GROUP BY units
            """.formatted(Sql.micros("s.started_at"), Sql.micros("s.ended_at"), Known.at("u.entry"));

    private static final String LIMITS = """
            SELECT %s, o.uses FROM catalog.station_revision v LEFT JOIN catalog.position_carry_over o
              ON o.entry = v.entry AND o.position = :position
            WHERE v.station = (SELECT p.station FROM catalog.position p WHERE p.id = :position) AND %s
            ORDER BY v.effective_at, v.entry
            """.formatted(Sql.micros("v.effective_at"), Known.at("v.entry"));

    private record Recorded(
            long entry,
            @Nullable Long lot,
            long instant,
            @Nullable Long item) {}

    private static final RowMapper<Recorded> RECORDED = DataClassRowMapper.newInstance(Recorded.class);

    private final JdbcClient jdbc;
    private final long cutoff;
    private final Clocks clocks;
    private final LineDoubts doubts;
    private final Map<Long, Long> takenBack;
    private final Map<Long, Changes> changes = new HashMap<>();
    private final Map<Long, PositionTimeline> timelines = new HashMap<>();

    PositionHistory(JdbcClient jdbc, long cutoff, Clocks clocks, LineRecords lines) {
        this.doubts = new LineDoubts(lines.open(), this::itemOf);
        this.takenBack = LineDoubts.takingBack(lines.open());
        this.jdbc = jdbc;
        this.cutoff = cutoff;
        this.clocks = clocks;
    }

    /** What was loaded and taken off; read without the uses, which are many. */
    Changes changes(StationPosition position) {
        return changes.computeIfAbsent(
                position.id(),
                any -> Changes.of(charges(position), discharges(position), takenBack, doubts.at(position.id())));
    }

    PositionTimeline timeline(StationPosition position) {
        return timelines.computeIfAbsent(position.id(), any -> read(position));
    }

    private PositionTimeline read(StationPosition position) {
        Changes known = changes(position);
        return PositionTimeline.of(position.named(), known, cleanPoints(position), uses(position), limits(position));
    }

    private CarryOverLimits limits(StationPosition position) {
        List<CarryOverLimits.Limit> limits = facts(LIMITS, position, (row, number) -> limit(row));
        return limits.stream().allMatch(limit -> limit.uses() == null)
                ? CarryOverLimits.NONE
                : new CarryOverLimits(limits, cycles(position));
    }

    private static CarryOverLimits.Limit limit(ResultSet row) throws SQLException {
        Long uses = Sql.optional(row, 2);
        return new CarryOverLimits.Limit(row.getLong(1), uses == null ? null : uses.intValue());
    }

    private List<Charge> charges(StationPosition position) {
        return facts(CHARGES, position, RECORDED).stream()
                .map(row -> new Charge(
                        TraceRef.lot(row.lot() == null ? 0 : row.lot()),
                        row.item(),
                        told(position, row),
                        row.entry(),
                        unproven(position, row)))
                .toList();
    }

    private List<Discharge> discharges(StationPosition position) {
        return facts(DISCHARGES, position, RECORDED).stream()
                .map(row -> new Discharge(
                        row.lot() == null ? null : TraceRef.lot(row.lot()),
                        told(position, row),
                        row.entry(),
                        unproven(position, row)))
                .toList();
    }

    private List<Moment> cleanPoints(StationPosition position) {
        return facts(
                        CLEAN_POINTS,
                        position,
                        (row, number) -> Map.entry(row.getLong(2), clocks.told(position.station(), row.getLong(1))))
                .stream()
                .filter(cleaned -> !takenBack.containsKey(cleaned.getKey()))
                .map(Map.Entry::getValue)
                .toList();
    }

    private @Nullable Long itemOf(TraceRef lot) {
        return jdbc.sql(ITEM)
                .param("lot", lot.id())
                .param("cutoff", cutoff)
                .query((row, number) -> Optional.ofNullable(Sql.optional(row, 1)))
                .optional()
                .flatMap(Function.identity())
                .orElse(null);
    }

    private List<Use> uses(StationPosition position) {
        return facts(USES, position, (row, number) -> {
            Long lot = Sql.optional(row, 4);
            return new Use(between(position, row), row.getLong(3), lot == null ? null : TraceRef.lot(lot));
        });
    }

    private List<Moment> cycles(StationPosition position) {
        return facts(CYCLES, position, (row, number) -> between(position, row));
    }

    private Moment between(StationPosition position, ResultSet row) throws SQLException {
        return clocks.told(position.station(), row.getLong(1), row.getLong(2));
    }

    private <T> List<T> facts(String sql, StationPosition position, RowMapper<T> row) {
        return jdbc.sql(sql)
                .param("position", position.id())
                .param("cutoff", cutoff)
                .query(row)
                .list();
    }

    private Moment told(StationPosition position, Recorded row) {
        return clocks.told(position.station(), row.instant());
    }

    private @Nullable Long unproven(StationPosition position, Recorded row) {
        return clocks.isProven(position.station(), row.instant()) ? null : row.instant();
    }
}
