package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.records.Elsewhere;
import dev.sunthread.genealogy.records.Installation;
import dev.sunthread.genealogy.records.PlacementFacts;
import dev.sunthread.genealogy.records.PlacementRecords;
import dev.sunthread.genealogy.records.Removal;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Reads installations and removals that history tells at a cut-off: those asked for, and every other one of the same
 * children or positions, which may contradict them.
 */
public final class PlacementHistory implements PlacementRecords {

    private static final String TOUCHED = """
            WITH asked AS (
              SELECT i.child_unit, i.parent_position FROM production.installation i WHERE i.%1$s = ANY (:ids)
              UNION
              SELECT r.child_unit, r.parent_position FROM production.removal r WHERE r.%1$s = ANY (:ids)),
            """;

    private static final String PARENT_TOUCHED = """
            WITH asked AS (
              SELECT i.child_unit, i.parent_position FROM production.parent_position p CROSS JOIN LATERAL (
                SELECT child_unit, parent_position FROM production.installation WHERE parent_position = p.id OFFSET 0) i
              WHERE p.parent = ANY (:ids)
              UNION
              SELECT r.child_unit, r.parent_position FROM production.removal r WHERE r.parent = ANY (:ids)),
            """;

    /**
     * What is recorded of a position, and all that is recorded of any unit that is recorded there. Each OFFSET makes the
     * planner look row by row through an index; it overrates how many rows there are and would read whole tables.
     */
    private static final String BESIDE = """
            put_in AS (
              SELECT i.* FROM (SELECT DISTINCT parent_position FROM asked) a CROSS JOIN LATERAL (
                SELECT * FROM production.installation WHERE parent_position = a.parent_position OFFSET 0) i),
            taken_out AS (
              SELECT r.* FROM (SELECT DISTINCT parent_position FROM asked) a CROSS JOIN LATERAL (
                SELECT parent FROM production.parent_position WHERE id = a.parent_position OFFSET 0) p CROSS JOIN LATERAL (
                SELECT * FROM production.removal
                WHERE parent = p.parent AND parent_position = a.parent_position OFFSET 0) r),
            beside AS (
              SELECT child_unit FROM asked UNION SELECT child_unit FROM put_in UNION SELECT child_unit FROM taken_out),
            told AS (
              SELECT entry, child_unit, child_lot, NULL::bigint AS parent, parent_position, station, installed_at AS told_at FROM put_in
              UNION
              SELECT i.entry, i.child_unit, i.child_lot, NULL, i.parent_position, i.station, i.installed_at FROM asked a
              CROSS JOIN LATERAL (SELECT * FROM production.installation WHERE child_unit = a.child_unit OFFSET 0) i
              UNION
              SELECT entry, child_unit, child_lot, parent, parent_position, station, removed_at FROM taken_out
              UNION
              SELECT r.entry, r.child_unit, r.child_lot, r.parent, r.parent_position, r.station, r.removed_at FROM beside b
              CROSS JOIN LATERAL (SELECT * FROM production.removal WHERE child_unit = b.child_unit OFFSET 0) r)
            SELECT entry, child_unit, child_lot, coalesce(told.parent, p.parent), p.position, station,
              (extract(epoch FROM told_at) * 1000000)::bigint, told.parent IS NULL
            FROM told LEFT JOIN LATERAL (
              SELECT parent, position FROM production.parent_position WHERE id = told.parent_position OFFSET 0) p ON true
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
    private final CarrierHistory carriers;

    public PlacementHistory(JdbcClient jdbc, long cutoff, Clocks clocks) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
        this.clocks = clocks;
        this.carriers = new CarrierHistory(jdbc, cutoff, clocks);
    }

    @Override
    public PlacementFacts of(Collection<TraceRef> children) {
        return both(
                read(TOUCHED.formatted("child_unit"), Sql.ids(children, TraceKind.UNIT)),
                read(TOUCHED.formatted("child_lot"), Sql.ids(children, TraceKind.LOT)));
    }

    @Override
    public PlacementFacts in(Collection<TraceRef> parents) {
        return read(PARENT_TOUCHED, Sql.ids(parents, TraceKind.UNIT));
    }

    @Override
    public PlacementFacts carrying(Collection<TraceRef> carried) {
        return carriers.carrying(carried);
    }

    @Override
    public PlacementFacts carriedBy(Collection<TraceRef> carrying) {
        return carriers.carriedBy(Sql.ids(carrying, TraceKind.CARRIER));
    }

    @Override
    public List<Elsewhere> elsewhere(Collection<TraceRef> units) {
        return carriers.elsewhere(units);
    }

    private static PlacementFacts both(PlacementFacts one, PlacementFacts other) {
        return new PlacementFacts(
                Stream.concat(one.installations().stream(), other.installations().stream())
                        .distinct()
                        .toList(),
                Stream.concat(one.removals().stream(), other.removals().stream())
                        .distinct()
                        .toList());
    }

    private PlacementFacts read(String asked, Long[] ids) {
        if (ids.length == 0) {
            return PlacementFacts.NONE;
        }
        List<Told> told = jdbc.sql(asked + BESIDE)
                .param("ids", ids)
                .param("cutoff", cutoff)
                .query((row, number) -> told(row))
                .list();
        return new PlacementFacts(
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
