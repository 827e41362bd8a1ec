package dev.sunthread.production;

/**
 * The units that were in one assembly with others, and the carriers they were on, as state has it: the beginning of a
 * query whose parameter {@code units} names the units asked about.
 */
public final class Assemblies {

    private static final String UP = """
            WITH RECURSIVE up (unit, other, during) AS (
              SELECT u, u, tstzrange(NULL, NULL) FROM unnest(:units) u
              UNION
              SELECT x.unit, pp.parent, x.during * s.during FROM up x
              CROSS JOIN LATERAL (
                SELECT s.parent_position, s.applied, s.during FROM production.stay s WHERE s.child_unit = x.other OFFSET 0) s
              JOIN production.parent_position pp ON pp.id = s.parent_position WHERE s.applied AND s.during && x.during)
            """;

    /** A table {@code up} of unit, other and during: the unit itself and all that it was inside of, and when. */
    public static final String WITH_UP = UP;

    /**
     * Also a table {@code around}, that has all that was inside any of those then, and a table {@code carried} of unit,
     * carrier and during: the carriers that any of these were on, at any depth.
     */
    // OFFSET 0 has the few things looked up one by one; the planner would rather read all that was ever carried
    public static final String WITH_AROUND_AND_CARRIED = UP + """
            , around (unit, other, during) AS (
              SELECT unit, other, during FROM up
              UNION
              SELECT x.unit, s.child_unit, x.during * s.during FROM around x
              CROSS JOIN LATERAL (
                SELECT pp.id FROM production.parent_position pp WHERE pp.parent = x.other OFFSET 0) p
              CROSS JOIN LATERAL (
                SELECT s.child_unit, s.applied, s.during FROM production.stay s WHERE s.parent_position = p.id OFFSET 0) s
              WHERE s.child_unit IS NOT NULL AND s.applied AND s.during && x.during),
            carried (unit, carrier, during) AS (
              SELECT x.unit, c.carrier, x.during * c.during
              FROM around x CROSS JOIN LATERAL (
                SELECT c.carrier, c.during FROM production.carrying c
                WHERE c.unit = x.other AND c.during && x.during OFFSET 0) c
              UNION
              SELECT x.unit, c.carrier, x.during * c.during
              FROM carried x CROSS JOIN LATERAL (
                SELECT c.carrier, c.during FROM production.carrying c WHERE %s OFFSET 0) c)
            """.formatted(CarrierHistory.AROUND_IT);

    private Assemblies() {}
}
