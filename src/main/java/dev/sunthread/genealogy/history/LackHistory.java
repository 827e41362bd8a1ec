package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.demand.UnitDemand;
import dev.sunthread.kernel.TraceKind;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Finds in the whole plant the units that may lack what is demanded. It leaves one out only if what is demanded surely
 * is recorded, as known at the cut-off, or if nothing was ever told that makes it due, by a kept line neither; whatever
 * was ever withdrawn, or contradicts, or is not known yet, or lies in a spell of times that are not proven, speaks for
 * looking closer.
 */
final class LackHistory {

    private static final String TOLD_LATER = """
            (EXISTS (SELECT FROM production.step_unit lu JOIN production.step ls USING (entry)
               WHERE lu.unit = u.id AND ls.operation = ANY (:later))
             OR EXISTS (SELECT FROM production.installation li WHERE li.child_unit = u.id)
             OR EXISTS (SELECT FROM production.removal lr WHERE lr.child_unit = u.id)
             OR EXISTS (SELECT FROM production.shipment_unit lh WHERE lh.unit = u.id)
             OR EXISTS (SELECT FROM unnest(:moved::bigint[]) m(unit) WHERE m.unit = u.id))
            """;

    private static final String MATERIAL = """
            WITH %s,
            taking AS (SELECT DISTINCT v.entry FROM production.step_use v WHERE v.item = ANY (:accepted)),
            own AS (
              SELECT su.unit, bool_or(%s) AS was_done,
                bool_and(t.entry IS NOT NULL AND s.entry <> ALL (:takenBack)) AS took
              FROM production.step s JOIN production.step_unit su USING (entry) CROSS JOIN line
              LEFT JOIN ledger.withdrawal w ON w.target = s.entry LEFT JOIN taking t ON t.entry = s.entry
              WHERE s.operation = :operation GROUP BY su.unit)
            SELECT u.id FROM production.unit u LEFT JOIN own ON own.unit = u.id
            WHERE u.item = :item AND (NOT own.took OR own.was_done IS NOT TRUE AND %s)
            """.formatted(SurelyKnown.LINE, SurelyKnown.at("s.entry"), TOLD_LATER);

    /**
     * A run counts for a step of the operation if it surely began after that did, and before any step of a later
     * operation that may have been done after it; whatever step was ever told counts.
     */
    private static final String RUN = """
            WITH %s,
            slack AS MATERIALIZED (
              SELECT make_interval(secs => 2 * coalesce(max(v.clock_uncertainty), 0)) AS slack
              FROM catalog.station_revision v),
            known AS MATERIALIZED (
              SELECT DISTINCT r.unit, r.run, r.started_at
              FROM (%%s) r CROSS JOIN line LEFT JOIN ledger.withdrawal w ON w.target = r.entry WHERE %s),
            own AS (SELECT k.unit, count(DISTINCT k.run) AS done FROM known k GROUP BY k.unit),
            told AS MATERIALIZED (
              SELECT su.unit, s.started_at, s.operation FROM production.step_unit su JOIN production.step s USING (entry)
              JOIN production.unit u ON u.id = su.unit AND u.item = :item
              WHERE s.operation = :operation OR s.operation = ANY (:later)),
            spans AS (
              SELECT s.unit, s.started_at, min(l.started_at) AS next_at FROM told s CROSS JOIN slack
              LEFT JOIN told l ON l.unit = s.unit AND l.operation = ANY (:later)
                AND l.started_at >= s.started_at - slack.slack
              WHERE s.operation = :operation GROUP BY s.unit, s.started_at),
            met AS (
              SELECT DISTINCT e.unit, e.started_at FROM spans e CROSS JOIN slack
              JOIN known k ON k.unit = e.unit AND k.started_at >= e.started_at + slack.slack
                AND (e.next_at IS NULL OR k.started_at + slack.slack < e.next_at)
                AND NOT EXISTS (SELECT FROM quality.unproven_time x
                  WHERE e.started_at BETWEEN x.since - slack.slack AND x.until + slack.slack
                    OR k.started_at BETWEEN x.since - slack.slack AND x.until + slack.slack
                    OR e.next_at BETWEEN x.since - slack.slack AND x.until + slack.slack)),
            unmet AS (
              SELECT DISTINCT e.unit FROM spans e LEFT JOIN met m USING (unit, started_at) WHERE m.unit IS NULL)
            SELECT u.id FROM production.unit u LEFT JOIN own ON own.unit = u.id
            LEFT JOIN unnest(:twice::bigint[]) t(unit) ON t.unit = u.id LEFT JOIN unmet n ON n.unit = u.id
            WHERE u.item = :item AND %s
              AND (coalesce(own.done, 0) < :times OR t.unit IS NOT NULL OR n.unit IS NOT NULL)
            """.formatted(SurelyKnown.LINE, SurelyKnown.at("r.entry"), TOLD_LATER);

    /**
     * What surely lay on a carrier in a run: loaded in the days before it, and next taken off, it or all, after it, with
     * nothing put in its place meanwhile, and nothing told of it elsewhere that was not over before or began after that.
     * The slack is what the clocks of two stations may differ by.
     */
    private static final String ON_CARRIERS = """
            SELECT c.entry, c.run, l.unit, c.started_at
            FROM cure.run_record c JOIN cure.run_carrier m USING (entry) CROSS JOIN line CROSS JOIN (
              SELECT make_interval(secs => 2 * coalesce(max(v.clock_uncertainty), 0)) AS slack
              FROM catalog.station_revision v) k
            JOIN production.carrier_load l ON l.carrier = m.carrier AND l.unit IS NOT NULL
              AND l.loaded_at BETWEEN c.started_at - interval '3 days' AND c.started_at - slack
            CROSS JOIN LATERAL (
              SELECT o.entry, o.unloaded_at FROM production.carrier_unload o
              WHERE o.carrier = l.carrier AND o.unloaded_at >= l.loaded_at - slack
                AND (o.unit = l.unit OR o.unit IS NULL AND o.inner_carrier IS NULL)
              ORDER BY o.unloaded_at LIMIT 1) o
            LEFT JOIN ledger.withdrawal w ON w.target = l.entry LEFT JOIN ledger.withdrawal ow ON ow.target = o.entry
            WHERE c.recipe = :definition AND %s AND o.entry < line.first_unknown AND ow.entry IS NULL
              AND o.unloaded_at > c.ended_at + slack
              AND l.unit <> ALL (:loaded) AND l.carrier <> ALL (:carriers)
              AND NOT EXISTS (SELECT FROM quality.unproven_time x
                WHERE x.since <= o.unloaded_at + slack AND x.until >= l.loaded_at - slack)
              AND NOT EXISTS (SELECT FROM production.carrier_load n
                WHERE n.carrier = l.carrier AND n.loaded_at BETWEEN l.loaded_at - slack AND o.unloaded_at + slack
                  AND (n.unit = l.unit OR n.position = l.position)
                  AND (n.entry <> l.entry OR n.ordinal <> l.ordinal))
              AND NOT EXISTS (SELECT FROM production.carrier_load n
                WHERE n.unit = l.unit AND n.carrier <> l.carrier AND n.loaded_at <= o.unloaded_at + slack
                  AND NOT EXISTS (SELECT FROM production.carrier_unload b LEFT JOIN ledger.withdrawal bw ON bw.target = b.entry
                    WHERE b.carrier = n.carrier AND (b.unit = l.unit OR b.unit IS NULL AND b.inner_carrier IS NULL)
                      AND b.unloaded_at BETWEEN n.loaded_at + slack AND l.loaded_at - slack
                      AND NOT EXISTS (SELECT FROM quality.unproven_time x
                        WHERE b.unloaded_at BETWEEN x.since - slack AND x.until + slack
                          AND n.loaded_at BETWEEN x.since - slack AND x.until + slack)
                      AND bw.entry IS NULL AND b.entry < line.first_unknown))
              AND NOT EXISTS (SELECT FROM production.carrier_unload n
                WHERE n.unit = l.unit AND n.carrier <> l.carrier
                  AND n.unloaded_at BETWEEN l.loaded_at - slack AND o.unloaded_at + slack)
              AND NOT EXISTS (SELECT FROM production.installation n
                WHERE n.child_unit = l.unit AND n.installed_at BETWEEN l.loaded_at - slack AND o.unloaded_at + slack)
              AND NOT EXISTS (SELECT FROM production.scrapping n
                WHERE n.unit = l.unit AND n.scrapped_at BETWEEN l.loaded_at - slack AND o.unloaded_at + slack)
              AND NOT EXISTS (SELECT FROM production.shipment_unit n JOIN production.shipment h USING (entry)
                WHERE n.unit = l.unit AND h.shipped_at BETWEEN l.loaded_at - slack AND o.unloaded_at + slack)
            """.formatted(SurelyKnown.at("l.entry"));

    private static final String CURE = RUN.formatted("""
            SELECT c.entry, c.run, m.unit, c.started_at FROM cure.run_record c JOIN cure.run_unit m USING (entry)
            WHERE c.recipe = :definition
            UNION ALL
            """ + ON_CARRIERS);

    private static final String TEST = RUN.formatted(
            "SELECT t.entry, t.run, t.unit, t.started_at FROM electrical.run_record t WHERE t.specification = :definition");

    private static final String CHILDREN = """
            WITH %s,
            slack AS MATERIALIZED (
              SELECT make_interval(secs => 2 * coalesce(max(v.clock_uncertainty), 0)) AS slack
              FROM catalog.station_revision v),
            due AS MATERIALIZED (
              SELECT u.id, least(
                (SELECT min(s.ended_at) FROM production.step_unit su JOIN production.step s USING (entry)
                 WHERE su.unit = u.id AND s.operation = ANY (:later)),
                (SELECT min(i.installed_at) FROM production.installation i WHERE i.child_unit = u.id),
                (SELECT timestamptz '-infinity' FROM production.removal r WHERE r.child_unit = u.id LIMIT 1),
                (SELECT timestamptz '-infinity' FROM unnest(:moved::bigint[]) m(unit) WHERE m.unit = u.id LIMIT 1),
                (SELECT min(h.shipped_at) FROM production.shipment_unit su JOIN production.shipment h USING (entry)
                 WHERE su.unit = u.id)) AS since
              FROM production.unit u WHERE u.item = :item)
            SELECT DISTINCT d.id FROM due d CROSS JOIN unnest(:positions) AS q(position)
            LEFT JOIN (%s
              AND p.parent IN (SELECT u.id FROM production.unit u WHERE u.item = :item) AND p.position = ANY (:positions)) s
              ON s.parent = d.id AND s.position = q.position
            WHERE d.since IS NOT NULL AND (s.since IS NULL OR d.since < s.since OR EXISTS (
              SELECT FROM quality.unproven_time x CROSS JOIN slack
              WHERE s.since BETWEEN x.since - slack.slack AND x.until + slack.slack))
            """.formatted(SurelyKnown.LINE, SurelyKnown.LASTING);

    private final JdbcClient jdbc;
    private final long cutoff;
    private final DoubtfulPlaces doubtful;
    private final Map<UnitDemand, List<Long>> known = new HashMap<>();

    LackHistory(JdbcClient jdbc, long cutoff, DoubtfulPlaces doubtful) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
        this.doubtful = doubtful;
    }

    /** Each demand is read once: every item that may meet it asks again. */
    Set<Long> unitsThatMayLack(Collection<UnitDemand> demands) {
        Set<Long> units = new HashSet<>();
        demands.forEach(demand -> units.addAll(known.computeIfAbsent(demand, this::read)));
        return units;
    }

    private List<Long> read(UnitDemand demand) {
        if (demand instanceof UnitDemand.OfMaterial material) {
            return read(
                    MATERIAL,
                    demand,
                    Map.of("operation", material.operation(), "accepted", Sql.ids(material.accepted())));
        }
        if (demand instanceof UnitDemand.OfRun run) {
            boolean isCure = run.run().run() == TraceKind.CURE_RUN;
            Map<String, Object> own =
                    Map.of("definition", run.run().definition(), "times", run.times(), "operation", run.operation());
            return read(isCure ? CURE : TEST, demand, own);
        }
        Set<String> positions = ((UnitDemand.OfChildren) demand).positions();
        return read(CHILDREN, demand, Map.of("positions", positions.toArray(String[]::new)));
    }

    private List<Long> read(String sql, UnitDemand demand, Map<String, Object> own) {
        Map<String, Object> params = new TreeMap<>(own);
        params.putAll(doubtful.params());
        params.put("item", demand.item());
        params.put("later", demand.later().toArray(String[]::new));
        params.put("cutoff", cutoff);
        return jdbc.sql(sql)
                .params(params)
                .query((row, number) -> row.getLong(1))
                .list();
    }
}
