package dev.sunthread.production;

import dev.sunthread.ledger.Known;

/** Queries for open holds on what units are built together with. */
final class AssemblyHolds {

    private static final String OPEN = "h.kind = '%s' AND " + Known.now("h.entry")
            + " AND NOT EXISTS (SELECT FROM holds.release r WHERE r.hold_entry = h.entry AND r.hold_ordinal = h.ordinal AND "
            + Known.now("r.entry") + ")";

    private static final String OPEN_UNITS = OPEN.formatted("UNIT");
    private static final String OPEN_LOTS = OPEN.formatted("LOT");

    private static final String PARENTS = """
            CROSS JOIN LATERAL (
              SELECT pp.parent FROM production.stay s JOIN production.parent_position pp ON pp.id = s.parent_position
              WHERE s.child_unit = x.other AND s.applied AND s.during @> :at OFFSET 0) n
            """;

    private static final String CHILDREN = """
            CROSS JOIN LATERAL (
              SELECT s.child_unit AS child, s.child_lot FROM production.parent_position pp
              JOIN production.stay s ON s.parent_position = pp.id AND s.applied AND s.during @> :at
              WHERE pp.parent = x.other OFFSET 0) n
            """;

    /** A table of unit, other and whether it is within it: all that each unit is built together with at one time. */
    // OFFSET 0 as in Assemblies
    private static final String ASSEMBLY = """
            WITH RECURSIVE up (unit, other) AS (
              SELECT u, u FROM unnest(:units) u
              UNION SELECT x.unit, n.parent FROM up x %1$s),
            inside (unit, other) AS (
              SELECT u, u FROM unnest(:units) u
              UNION SELECT x.unit, n.child FROM inside x %2$s WHERE n.child IS NOT NULL),
            around (unit, other) AS (
              SELECT unit, other FROM up WHERE other <> unit
              UNION SELECT x.unit, n.child FROM around x %2$s WHERE n.child IS NOT NULL AND :whole),
            together AS (
              SELECT unit, other, true AS within FROM inside
              UNION SELECT a.unit, a.other, false FROM around a
              WHERE NOT EXISTS (SELECT FROM inside i WHERE i.unit = a.unit AND i.other = a.other))
            """.formatted(PARENTS, CHILDREN);

    static final String HELD_UNITS = ASSEMBLY + """
            SELECT t.unit, CASE WHEN t.within THEN 'INSIDE' ELSE 'AROUND' END AS place, t.other AS subject,
              u.number || ' ' || u.serial AS name, h.reason
            FROM together t CROSS JOIN LATERAL (
              SELECT h.entry, h.ordinal, h.reason FROM holds.hold h WHERE h.subject = t.other AND %s OFFSET 0) h
            CROSS JOIN LATERAL (
              SELECT i.number, u.serial FROM production.unit u JOIN catalog.item i ON i.id = u.item
              WHERE u.id = t.other OFFSET 0) u
            WHERE t.other <> t.unit ORDER BY t.unit, h.entry, h.ordinal
            """.formatted(OPEN_UNITS);

    /** A unit that was held together with a lot and released was looked at: that hold of the lot acts on it no more. */
    static final String HELD_LOTS =
            ASSEMBLY + """
            , given (unit, other, lot) AS (
              SELECT x.unit, x.other, coalesce(s.lot, l.lot) FROM together x
              CROSS JOIN LATERAL (
                SELECT n.entry FROM production.step_unit n
                WHERE n.unit = x.other AND n.entry <> :entry AND %2$s OFFSET 0) n
              CROSS JOIN LATERAL (
                SELECT u.lot, u.position, p.ended_at FROM production.step_use u JOIN production.step p USING (entry)
                WHERE u.entry = n.entry OFFSET 0) s
              LEFT JOIN LATERAL (
                SELECT l.lot FROM materials.loaded l
                WHERE s.lot IS NULL AND l.position = s.position AND l.during @> s.ended_at OFFSET 0) l ON true
              UNION
              SELECT x.unit, x.other, n.child_lot FROM together x %4$s WHERE n.child_lot IS NOT NULL)
            SELECT DISTINCT g.unit, 'LOT' AS place, g.lot AS subject, m.number AS name, h.reason
            FROM given g CROSS JOIN LATERAL (
              SELECT h.entry, h.reason FROM holds.hold h WHERE h.subject = g.lot AND %1$s OFFSET 0) h
            CROSS JOIN LATERAL (SELECT m.number FROM materials.lot m WHERE m.id = g.lot OFFSET 0) m
            WHERE NOT EXISTS (
              SELECT FROM holds.hold o JOIN holds.release r ON r.hold_entry = o.entry AND r.hold_ordinal = o.ordinal
              WHERE o.entry = h.entry AND o.kind = 'UNIT' AND o.subject IN (g.unit, g.other) AND %3$s)
            ORDER BY 1, 3
            """.formatted(OPEN_LOTS, Known.now("n.entry"), Known.now("r.entry"), CHILDREN);

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
