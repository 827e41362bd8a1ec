package dev.sunthread.production;

import dev.sunthread.holds.Holds;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import dev.sunthread.ledger.SoleWriter;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What is on hold of all that units are built together with: inside them, around them, and the lots in any of these. */
@Repository
class HeldAssemblies {

    /** How a thing on hold belongs to a unit. */
    enum Place {
        INSIDE,
        AROUND,
        LOT
    }

    /** A hold on something that a unit is built together with. */
    record HeldPart(long unit, Place place, long subject, String name, String reason) {

        TraceRef ref() {
            return place == Place.LOT ? TraceRef.lot(subject) : TraceRef.unit(subject);
        }
    }

    private static final String OPEN = "h.kind = '%s' AND " + Known.now("h.entry")
            + " AND NOT EXISTS (SELECT FROM holds.release r WHERE r.hold_entry = h.entry AND r.hold_ordinal = h.ordinal AND "
            + Known.now("r.entry") + ")";

    private static final String OPEN_UNITS = OPEN.formatted("UNIT");
    private static final String OPEN_LOTS = OPEN.formatted("LOT");

    /** Tables up and down of unit and other, at one time: what each unit is inside of, and what is inside any of it. */
    private static final String ASSEMBLY = """
            WITH RECURSIVE up (unit, other) AS (
              SELECT u, u FROM unnest(:units) u
              UNION
              SELECT x.unit, pp.parent
              FROM up x JOIN production.stay s ON s.child_unit = x.other AND s.applied AND s.during @> :at
              JOIN production.parent_position pp ON pp.id = s.parent_position),
            inside (unit, other) AS (
              SELECT u, u FROM unnest(:units) u
              UNION
              SELECT x.unit, s.child_unit FROM inside x JOIN production.parent_position pp ON pp.parent = x.other
              JOIN production.stay s ON s.parent_position = pp.id AND s.applied AND s.during @> :at
              WHERE s.child_unit IS NOT NULL),
            around (unit, other) AS (
              SELECT unit, other FROM up WHERE other <> unit
              UNION
              SELECT x.unit, s.child_unit FROM around x JOIN production.parent_position pp ON pp.parent = x.other
              JOIN production.stay s ON s.parent_position = pp.id AND s.applied AND s.during @> :at
              WHERE s.child_unit IS NOT NULL AND :whole),
            together AS (
              SELECT unit, other, true AS within FROM inside
              UNION SELECT a.unit, a.other, false FROM around a
              WHERE NOT EXISTS (SELECT FROM inside i WHERE i.unit = a.unit AND i.other = a.other))
            """;

    private static final String HELD = ASSEMBLY + """
            SELECT t.unit, CASE WHEN t.within THEN 'INSIDE' ELSE 'AROUND' END AS place, h.subject,
              i.number || ' ' || u.serial AS name, h.reason
            FROM together t JOIN holds.hold h ON h.subject = t.other AND t.other <> t.unit AND %s
            JOIN production.unit u ON u.id = t.other JOIN catalog.item i ON i.id = u.item
            ORDER BY t.unit, h.entry, h.ordinal
            """.formatted(OPEN_UNITS);

    /** A unit that was held together with a lot and released was looked at: that hold of the lot acts on it no more. */
    private static final String HELD_LOTS = ASSEMBLY + """
            , held AS MATERIALIZED (SELECT h.subject, h.reason, h.entry FROM holds.hold h WHERE %s),
            given (unit, other, lot) AS (
              SELECT t.unit, t.other, coalesce(s.lot, l.lot)
              FROM together t JOIN production.step_unit n ON n.unit = t.other
              JOIN production.step p ON p.entry = n.entry JOIN production.step_use s ON s.entry = n.entry
              LEFT JOIN materials.loaded l ON s.lot IS NULL AND l.position = s.position AND l.during @> p.ended_at
              WHERE %s
              UNION
              SELECT t.unit, t.other, s.child_lot FROM together t JOIN production.parent_position pp ON pp.parent = t.other
              JOIN production.stay s ON s.parent_position = pp.id AND s.during @> :at AND s.child_lot IS NOT NULL)
            SELECT DISTINCT g.unit, 'LOT' AS place, h.subject, m.number AS name, h.reason
            FROM given g JOIN held h ON h.subject = g.lot JOIN materials.lot m ON m.id = h.subject
            WHERE NOT EXISTS (
              SELECT FROM holds.hold o JOIN holds.release r ON r.hold_entry = o.entry AND r.hold_ordinal = o.ordinal
              WHERE o.entry = h.entry AND o.kind = 'UNIT' AND o.subject IN (g.unit, g.other) AND %s)
            ORDER BY 1, 3
            """.formatted(OPEN_LOTS, Known.now("n.entry"), Known.now("r.entry"));

    /** Every unit that is on hold or was ever built together with one, whatever else is there. */
    private static final String TOUCHED = """
            WITH RECURSIVE touched (unit) AS (
              SELECT h.subject FROM holds.hold h WHERE %s
              UNION
              SELECT n.unit FROM touched t CROSS JOIN LATERAL (
                SELECT pp.parent FROM production.stay s JOIN production.parent_position pp ON pp.id = s.parent_position
                WHERE s.child_unit = t.unit
                UNION ALL
                SELECT s.child_unit FROM production.parent_position pp JOIN production.stay s ON s.parent_position = pp.id
                WHERE pp.parent = t.unit AND s.child_unit IS NOT NULL) n (unit))
            SELECT unit FROM touched
            """.formatted(OPEN_UNITS);

    private static final String UNITS = "units";
    private static final String LOTS = "lots";

    private final SoleWriter sole;
    private final JdbcClient jdbc;

    HeldAssemblies(SoleWriter sole, JdbcClient jdbc) {
        this.sole = sole;
        this.jdbc = jdbc;
    }

    /**
     * What is on hold of all that these units are built together with at a time, but for themselves.
     *
     * @param whole whether all that is in the same outermost parent counts, or only what the unit is in and what is in it
     */
    List<HeldPart> of(Collection<Long> units, OffsetDateTime at, boolean whole) {
        List<HeldPart> held = new ArrayList<>();
        if (unitsMayBeTouched(units)) {
            held.addAll(read(HELD, units, at, whole));
        }
        if (anyLotIsHeld()) {
            held.addAll(read(HELD_LOTS, units, at, whole));
        }
        return held;
    }

    private List<HeldPart> read(String sql, Collection<Long> units, OffsetDateTime at, boolean whole) {
        return jdbc.sql(sql)
                .param("units", units.toArray(Long[]::new))
                .param("at", at)
                .param("whole", whole)
                .query(DataClassRowMapper.newInstance(HeldPart.class))
                .list();
    }

    /** Says that something was put into something by what is being recorded. */
    void joined(Collection<Long> units) {
        Set<Long> touched = memory().get(UNITS);
        if (touched != null && units.stream().anyMatch(touched::contains)) {
            memory().remove(UNITS);
        }
    }

    private boolean unitsMayBeTouched(Collection<Long> units) {
        if (!sole.isSole()) {
            return true;
        }
        Set<Long> touched = memory().computeIfAbsent(
                UNITS, any -> new HashSet<>(jdbc.sql(TOUCHED).query(Long.class).list()));
        return units.stream().anyMatch(touched::contains);
    }

    private boolean anyLotIsHeld() {
        return !memory().computeIfAbsent(LOTS, any -> new HashSet<>(jdbc.sql(
                                        "SELECT h.subject FROM holds.hold h WHERE " + OPEN_LOTS + " LIMIT 1")
                                .query(Long.class)
                                .list()))
                .isEmpty();
    }

    private Map<String, Set<Long>> memory() {
        return sole.known(Holds.TOUCHED);
    }
}
