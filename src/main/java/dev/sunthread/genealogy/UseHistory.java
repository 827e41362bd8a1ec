package dev.sunthread.genealogy;

import dev.sunthread.ledger.Known;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Reads the uses that history tells at a cut-off, and the positions they may have drawn from. */
final class UseHistory {

    private static final String USES = """
            SELECT u.entry, u.item, u.lot, u.position, s.station, st.code, s.operation,
              (extract(epoch FROM s.started_at) * 1000000)::bigint, (extract(epoch FROM s.ended_at) * 1000000)::bigint,
              (SELECT array_agg(su.unit ORDER BY su.unit) FROM production.step_unit su WHERE su.entry = u.entry)
            FROM (%s) asked
            JOIN production.step_use u USING (entry, ordinal)
            JOIN production.step s USING (entry) JOIN catalog.station st ON st.id = s.station
            WHERE %s
            """;

    private static final String HELD = """
            SELECT p.id, p.station, p.code, s.code AS station_code
            FROM (SELECT position FROM materials.charge WHERE lot = ANY (:ids)
                  UNION SELECT position FROM materials.discharge WHERE lot = ANY (:ids)) held
            JOIN catalog.position p ON p.id = held.position JOIN catalog.station s ON s.id = p.station
            """;

    /** Uses that name a lot or one of the positions, or no position of the stations. */
    private static final String OF_LOTS = """
            SELECT entry, ordinal FROM production.step_use WHERE lot = ANY (:ids)
            UNION
            SELECT entry, ordinal FROM production.step_use WHERE position = ANY (:positions)
            UNION
            SELECT u.entry, u.ordinal FROM production.step_use u JOIN production.step s USING (entry)
            WHERE u.position IS NULL AND s.station = ANY (:stations)
            """;

    private static final String OF_LOTS_OF_ANY_ITEM = USES.formatted(OF_LOTS, Known.at("u.entry"));

    private static final String OF_LOTS_OF_ITEMS =
            USES.formatted(OF_LOTS + " AND u.item = ANY (:items)", Known.at("u.entry"));

    private static final String OF_UNITS = USES.formatted("""
                    SELECT DISTINCT su.entry, x.ordinal FROM production.step_unit su JOIN production.step_use x USING (entry)
                    WHERE su.unit = ANY (:ids)
                    """, Known.at("u.entry"));

    private static final RowMapper<StationPosition> POSITION = DataClassRowMapper.newInstance(StationPosition.class);

    private final JdbcClient jdbc;
    private final long cutoff;
    private final Map<Long, List<StationPosition>> positions = new HashMap<>();

    UseHistory(JdbcClient jdbc, long cutoff) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
    }

    /** Every position where one of the lots was ever said to be. */
    List<StationPosition> positionsThatHeld(Collection<Long> lots) {
        return jdbc.sql(HELD)
                .param("ids", lots.toArray(Long[]::new))
                .query(POSITION)
                .list();
    }

    /** Uses that name a lot, or could have drawn from a position that held one; those name an item that is given. */
    List<RecordedUse> thatMayHaveTaken(
            Collection<Long> lots, Collection<StationPosition> held, Optional<Set<Long>> items) {
        return read(
                items.isPresent() ? OF_LOTS_OF_ITEMS : OF_LOTS_OF_ANY_ITEM,
                Map.of(
                        "ids", lots.toArray(Long[]::new),
                        "positions", held.stream().map(StationPosition::id).toArray(Long[]::new),
                        "stations", held.stream().map(StationPosition::station).toArray(Long[]::new),
                        "items", items.orElse(Set.of()).toArray(Long[]::new)));
    }

    List<RecordedUse> thatWentInto(Collection<Long> units) {
        return read(OF_UNITS, Map.of("ids", units.toArray(Long[]::new)));
    }

    /** Every position that the station ever had. */
    List<StationPosition> positions(long station) {
        return positions.computeIfAbsent(
                station, any -> jdbc.sql("""
                        SELECT p.id, p.station, p.code, s.code AS station_code
                        FROM catalog.position p JOIN catalog.station s ON s.id = p.station
                        WHERE s.id = ? ORDER BY p.id
                        """).param(station).query(POSITION).list());
    }

    private List<RecordedUse> read(String sql, Map<String, Object> params) {
        return jdbc.sql(sql)
                .params(params)
                .param("cutoff", cutoff)
                .query((row, number) -> use(row))
                .list();
    }

    private static RecordedUse use(ResultSet row) throws SQLException {
        return new RecordedUse(
                row.getLong(1),
                row.getLong(2),
                optional(row, 3),
                optional(row, 4),
                row.getLong(5),
                row.getString(6),
                row.getString(7),
                row.getLong(8),
                row.getLong(9),
                Arrays.asList((Long[]) row.getArray(10).getArray()));
    }

    private static @Nullable Long optional(ResultSet row, int column) throws SQLException {
        long value = row.getLong(column);
        return row.wasNull() ? null : value;
    }
}
