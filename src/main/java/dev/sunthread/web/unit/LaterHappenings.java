package dev.sunthread.web.unit;

import dev.sunthread.production.CarrierHistory;

/** What entries tell of a unit beside its own steps and parts: carriers, runs, recovery, scrapping and deviations. */
final class LaterHappenings {

    /** The carriers it was on, at any depth, and when. */
    private static final String CARRIED = """
            WITH RECURSIVE carried (carrier, during) AS (
              SELECT c.carrier, c.during FROM production.carrying c WHERE c.unit = :unit
              UNION
              SELECT c.carrier, x.during * c.during
              FROM carried x JOIN production.carrying c ON %s)
            """.formatted(CarrierHistory.AROUND_IT);

    private static final String CARRIERS = """
            SELECT l.entry, l.loaded_at, CASE WHEN l.position IS NULL THEN 'Put on carrier'
                     ELSE 'Put into position ' || l.position || ' of carrier' END, NULL, NULL, 'carrier', c.code
            FROM production.carrier_load l JOIN production.carrier c ON c.id = l.carrier WHERE l.unit = :unit
            UNION ALL
            SELECT u.entry, u.unloaded_at, 'Taken off carrier', NULL, NULL, 'carrier', c.code
            FROM production.carrier_unload u JOIN production.carrier c ON c.id = u.carrier WHERE u.unit = :unit
            UNION ALL
            SELECT u.entry, u.unloaded_at, 'Taken off with everything else that was on carrier', NULL, NULL, 'carrier', c.code
            FROM production.carrying s JOIN production.carrier_unload u ON u.carrier = s.carrier
              AND u.unloaded_at = upper(s.during) AND u.unit IS NULL AND u.inner_carrier IS NULL
            JOIN production.carrier c ON c.id = s.carrier WHERE s.unit = :unit
            """;

    private static final String CURED = """
            SELECT r.entry, r.ended_at, 'Cured by recipe ' || p.code || ' in ' || q.code || %s || ', cure run',
                   NULL, NULL, 'cure run', n.number
            FROM %s JOIN cure.run_record r USING (entry) JOIN cure.run n ON n.id = r.run
            JOIN catalog.recipe p ON p.id = r.recipe JOIN catalog.equipment q ON q.id = r.equipment
            """;

    private static final String CURED_BY_ITSELF =
            CURED.formatted("coalesce(' at ' || m.position, '')", "cure.run_unit m") + " WHERE m.unit = :unit";

    private static final String CURED_ON_CARRIERS = CARRIED
            + CURED.formatted(
                    "' on carrier ' || c.code",
                    "carried x JOIN production.carrier c ON c.id = x.carrier"
                            + " JOIN cure.run_carrier m ON m.carrier = x.carrier")
            + " WHERE x.during && tstzrange(r.started_at, r.ended_at, '[]')";

    private static final String TESTED = """
            SELECT r.entry, r.ended_at, CASE r.verdict WHEN 'PASS' THEN 'Passed' WHEN 'FAIL' THEN 'Failed'
                     ELSE 'Was in an invalid' END || ' test ' || s.code || ' on ' || q.code || ', test run',
                   NULL, NULL, 'test run', n.number
            FROM electrical.run_record r JOIN electrical.run n ON n.id = r.run
            JOIN catalog.specification s ON s.id = r.specification JOIN catalog.equipment q ON q.id = r.equipment
            WHERE r.unit = :unit
            """;

    private static final String DECIDED = """
            SELECT r.entry, r.recovered_at, 'Gave up ' || coalesce(r.quantity || ' ' || r.unit_of_measure, 'material')
                   || ', recovered into', NULL, r.lot, NULL, NULL
            FROM production.recovery r WHERE r.unit = :unit
            UNION ALL
            SELECT s.entry, s.scrapped_at, 'Scrapped' || coalesce(' at ' || st.code, '') || ': ' || s.why,
                   NULL, NULL, NULL, NULL
            FROM production.scrapping s LEFT JOIN catalog.station st ON st.id = s.station WHERE s.unit = :unit
            UNION ALL
            SELECT d.entry, NULL, 'Signed that it goes on without ' || coalesce('item ' || i.number, 'cure by recipe ' || p.code,
                     'test ' || s.code) || coalesce(' of operation ' || d.operation, '')
                   || coalesce(' in position ' || d.position, '') || ': ' || d.why, NULL, NULL, NULL, NULL
            FROM quality.deviation d LEFT JOIN catalog.item i ON i.id = d.item
            LEFT JOIN catalog.recipe p ON p.id = d.recipe LEFT JOIN catalog.specification s ON s.id = d.specification
            WHERE d.unit = :unit
            UNION ALL
            SELECT d.entry, NULL, 'Signed that it goes on without operation ' || d.operation || ': ' || d.why,
                   NULL, NULL, NULL, NULL
            FROM quality.operation_not_done d WHERE d.unit = :unit
            UNION ALL
            SELECT p.entry, p.signed_at, 'Signed that it goes on although a rule is broken (' || replace(p.rule, '-', ' ')
                   || coalesce(', operation ' || p.operation, '') || '): ' || p.why, NULL, NULL, NULL, NULL
            FROM holds.rule_pass p WHERE p.kind = 'UNIT' AND p.subject = :unit
            """;

    /** Entry, time, sentence, other unit, lot, and the kind and name of what else is named. */
    static final String TOLD =
            String.join(" UNION ALL ", CARRIERS, CURED_BY_ITSELF, "(" + CURED_ON_CARRIERS + ")", TESTED, DECIDED);

    private LaterHappenings() {}
}
