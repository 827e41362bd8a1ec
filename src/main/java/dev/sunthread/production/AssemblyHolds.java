package dev.sunthread.production;

import dev.sunthread.ledger.Known;

/** Queries for open holds on what units are built together with. */
final class AssemblyHolds {

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

    static final String HELD_UNITS = ASSEMBLY + """
            SELECT t.unit, CASE WHEN t.within THEN 'INSIDE' ELSE 'AROUND' END AS place, h.subject,
              i.number || ' ' || u.serial AS name, h.reason
            FROM together t JOIN holds.hold h ON h.subject = t.other AND t.other <> t.unit AND %s
            JOIN production.unit u ON u.id = t.other JOIN catalog.item i ON i.id = u.item
            ORDER BY t.unit, h.entry, h.ordinal
            """.formatted(OPEN_UNITS);

    /** A unit that was held together with a lot and released was looked at: that hold of the lot acts on it no more. */
    static final String HELD_LOTS = ASSEMBLY + """
            , held AS MATERIALIZED (SELECT h.subject, h.reason, h.entry FROM holds.hold h WHERE %s),
            given (unit, other, lot) AS (
              SELECT t.unit, t.other, coalesce(s.lot, l.lot)
              FROM together t JOIN production.step_unit n ON n.unit = t.other
              JOIN production.step p ON p.entry = n.entry JOIN production.step_use s ON s.entry = n.entry
              LEFT JOIN materials.loaded l ON s.lot IS NULL AND l.position = s.position AND l.during @> p.ended_at
              WHERE n.entry <> :entry AND %s
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
    static final String TOUCHED = """
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

    static final String ANY_LOT = "SELECT h.subject FROM holds.hold h WHERE " + OPEN_LOTS + " LIMIT 1";

    private AssemblyHolds() {}
}
