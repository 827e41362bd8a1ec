package dev.sunthread.genealogy;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Reads installations and removals that history tells at a cut-off: those asked for, and every other one of the same
 * children or positions, which may contradict them.
 */
final class InstallationHistory {

    private static final String TOUCHED = """
            WITH asked AS (
              SELECT i.child_unit, i.child_lot, i.parent_position FROM production.installation i WHERE i.%1$s = ANY (:ids)
              UNION ALL
              SELECT r.child_unit, r.child_lot, r.parent_position FROM production.removal r WHERE r.%1$s = ANY (:ids)),
            """;

    private static final String PARENT_TOUCHED = """
            WITH asked AS (
              SELECT i.child_unit, i.child_lot, i.parent_position FROM production.installation i
              JOIN production.parent_position p ON p.id = i.parent_position WHERE p.parent = ANY (:ids)
              UNION ALL
              SELECT r.child_unit, r.child_lot, r.parent_position FROM production.removal r WHERE r.parent = ANY (:ids)),
            """;

    private static final String INSTALLATIONS = """
            beside AS (
              SELECT i.entry FROM production.installation i JOIN asked a ON a.child_unit = i.child_unit
              UNION SELECT i.entry FROM production.installation i JOIN asked a ON a.child_lot = i.child_lot
              UNION SELECT i.entry FROM production.installation i JOIN asked a ON a.parent_position = i.parent_position)
            """;

    private static final String FACTS = """
            , facts AS (
              SELECT i.entry, i.child_unit, i.child_lot, p.parent, p.position, i.station, i.installed_at AS told_at, true AS put_in
              FROM beside JOIN production.installation i USING (entry)
              JOIN production.parent_position p ON p.id = i.parent_position)
            SELECT entry, child_unit, child_lot, parent, position, station,
              (extract(epoch FROM told_at) * 1000000)::bigint, put_in
            FROM (
              SELECT * FROM facts
              UNION
              SELECT r.entry, r.child_unit, r.child_lot, r.parent, p.position, r.station, r.removed_at, false
              FROM production.removal r LEFT JOIN production.parent_position p ON p.id = r.parent_position
              WHERE r.entry IN (
                SELECT u.entry FROM production.removal u
                JOIN (SELECT child_unit FROM facts UNION SELECT child_unit FROM asked) c ON c.child_unit = u.child_unit
                UNION ALL
                SELECT l.entry FROM production.removal l
                JOIN (SELECT child_lot FROM facts UNION SELECT child_lot FROM asked) c ON c.child_lot = l.child_lot)) told
            WHERE %s
            """.formatted(Known.at("told.entry"));

    private record Told(
            long entry,
            TraceRef child,
            TraceRef parent,
            @Nullable String position,
            Moment at,
            boolean putIn) {}

    private final JdbcClient jdbc;
    private final long cutoff;
    private final Clocks clocks;

    InstallationHistory(JdbcClient jdbc, long cutoff, Clocks clocks) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
        this.clocks = clocks;
    }

    List<Edge> outOfUnits(Collection<Long> units) {
        return edges(TOUCHED.formatted("child_unit"), units);
    }

    List<Edge> outOfLots(Collection<Long> lots) {
        return edges(TOUCHED.formatted("child_lot"), lots);
    }

    List<Edge> intoUnits(Collection<Long> parents) {
        return edges(PARENT_TOUCHED, parents);
    }

    private List<Edge> edges(String asked, Collection<Long> ids) {
        List<Told> told = jdbc.sql(asked + INSTALLATIONS + FACTS)
                .param("ids", ids.toArray(Long[]::new))
                .param("cutoff", cutoff)
                .query((row, number) -> told(row))
                .list();
        return InstallationEdges.of(
                told.stream()
                        .filter(Told::putIn)
                        .map(one -> new Installation(one.entry(), one.child(), one.parent(), one.position(), one.at()))
                        .toList(),
                told.stream()
                        .filter(one -> !one.putIn())
                        .map(one -> new Removal(one.entry(), one.child(), one.parent(), one.position(), one.at()))
                        .toList());
    }

    private Told told(ResultSet row) throws SQLException {
        long unit = row.getLong(2);
        TraceRef child = row.wasNull() ? TraceRef.lot(row.getLong(3)) : TraceRef.unit(unit);
        long station = row.getLong(6);
        Long known = row.wasNull() ? null : station;
        return new Told(
                row.getLong(1),
                child,
                TraceRef.unit(row.getLong(4)),
                row.getString(5),
                clocks.told(known, row.getLong(7)),
                row.getBoolean(8));
    }
}
