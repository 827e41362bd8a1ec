package dev.sunthread.genealogy;

import dev.sunthread.ledger.Known;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
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

    /** Uses that name a lot, or that could have drawn from a position where it was ever loaded. */
    private static final String OF_LOTS = USES.formatted("""
                    WITH held AS (
                      SELECT position FROM materials.charge WHERE lot = ANY (:ids)
                      UNION SELECT position FROM materials.discharge WHERE lot = ANY (:ids))
                    SELECT entry, ordinal FROM production.step_use WHERE lot = ANY (:ids)
                    UNION
                    SELECT u.entry, u.ordinal FROM production.step_use u JOIN held USING (position)
                    UNION
                    SELECT u.entry, u.ordinal FROM production.step_use u JOIN production.step s USING (entry)
                    WHERE u.position IS NULL AND s.station IN (
                      SELECT p.station FROM held JOIN catalog.position p ON p.id = held.position)
                    """, Known.at("u.entry"));

    private static final String OF_UNITS = USES.formatted("""
                    SELECT DISTINCT su.entry, x.ordinal FROM production.step_unit su JOIN production.step_use x USING (entry)
                    WHERE su.unit = ANY (:ids)
                    """, Known.at("u.entry"));

    private final JdbcClient jdbc;
    private final long cutoff;
    private final Map<Long, List<StationPosition>> positions = new HashMap<>();

    UseHistory(JdbcClient jdbc, long cutoff) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
    }

    List<RecordedUse> thatMayHaveTaken(Collection<Long> lots) {
        return read(OF_LOTS, lots);
    }

    List<RecordedUse> thatWentInto(Collection<Long> units) {
        return read(OF_UNITS, units);
    }

    /** Every position that the station ever had. */
    List<StationPosition> positions(long station) {
        return positions.computeIfAbsent(
                station,
                any -> jdbc.sql("""
                        SELECT p.id, p.station, p.code, s.code AS station_code
                        FROM catalog.position p JOIN catalog.station s ON s.id = p.station
                        WHERE s.id = ? ORDER BY p.id
                        """).param(station).query(StationPosition.class).list());
    }

    private List<RecordedUse> read(String sql, Collection<Long> ids) {
        return jdbc.sql(sql)
                .param("ids", ids.toArray(Long[]::new))
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
