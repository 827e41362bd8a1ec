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
              SELECT i.child_unit, i.parent_position FROM production.installation i WHERE i.%1$s = ANY (:ids)
              UNION
              SELECT r.child_unit, r.parent_position FROM production.removal r WHERE r.%1$s = ANY (:ids)),
            """;

    private static final String PARENT_TOUCHED = """
            WITH asked AS (
              SELECT i.child_unit, i.parent_position FROM production.installation i
              JOIN production.parent_position p ON p.id = i.parent_position WHERE p.parent = ANY (:ids)
              UNION
              SELECT r.child_unit, r.parent_position FROM production.removal r WHERE r.parent = ANY (:ids)),
            """;

    /** What is recorded of a position, and all that is recorded of any unit that is recorded there. */
    private static final String BESIDE = """
            place AS (
              SELECT DISTINCT p.id, p.parent FROM asked a JOIN production.parent_position p ON p.id = a.parent_position),
            put_in AS (SELECT i.entry, i.child_unit FROM place p JOIN production.installation i ON i.parent_position = p.id),
            taken_out AS (
              SELECT r.entry, r.child_unit FROM place p
              JOIN production.removal r ON r.parent = p.parent AND r.parent_position = p.id),
            beside AS (
              SELECT child_unit FROM asked UNION SELECT child_unit FROM put_in UNION SELECT child_unit FROM taken_out)
            SELECT entry, child_unit, child_lot, parent, position, station,
              (extract(epoch FROM told_at) * 1000000)::bigint, is_in
            FROM (
              SELECT i.entry, i.child_unit, i.child_lot, p.parent, p.position, i.station, i.installed_at AS told_at, true AS is_in
              FROM (SELECT entry FROM put_in
                    UNION SELECT i.entry FROM asked a JOIN production.installation i ON i.child_unit = a.child_unit) found
              JOIN production.installation i USING (entry)
              JOIN production.parent_position p ON p.id = i.parent_position
              UNION ALL
              SELECT r.entry, r.child_unit, r.child_lot, r.parent, p.position, r.station, r.removed_at, false
              FROM (SELECT entry FROM taken_out
                    UNION SELECT r.entry FROM beside b JOIN production.removal r ON r.child_unit = b.child_unit) found
              JOIN production.removal r USING (entry)
              LEFT JOIN production.parent_position p ON p.id = r.parent_position) told
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
        List<Told> told = jdbc.sql(asked + BESIDE)
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
