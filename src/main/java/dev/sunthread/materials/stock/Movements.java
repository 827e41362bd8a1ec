package dev.sunthread.materials.stock;

import dev.sunthread.ledger.Known;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What the materials' own happenings moved of a lot or container, as known at a cut-off; uses in units are not theirs. */
@Repository
public class Movements {

    private static final String CHANGED = """
            SELECT s.changed_at AS at, CASE s.way WHEN 'COUNT' THEN 'COUNTED' WHEN 'ISSUE' THEN 'ISSUED_WITHIN_THE_PLANT'
                     WHEN 'STOCK_RETURN' THEN 'BROUGHT_BACK_TO_THE_STORE' WHEN 'WASTE' THEN 'WASTED' ELSE 'SAMPLED' END AS way,
                   s.quantity, s.unit_of_measure, false AS "all"
            FROM materials.stock_change s WHERE %s AND %s
            UNION ALL
            SELECT n.ended_at, CASE n.why WHEN 'SCRAPPED' THEN 'SCRAPPED' ELSE 'RETURNED_TO_THE_SUPPLIER' END,
                   n.quantity, n.unit_of_measure, n.quantity IS NULL AND %s
            FROM materials.lot_ending n WHERE n.why <> 'USED_UP' AND %s AND %s
            """;

    /** Once it is told to be gone, nothing is left, whatever was computed. */
    private static final String GONE = """
            SELECT n.ended_at, 'COUNTED', 0, NULL, false
            FROM materials.lot_ending n WHERE %s AND %s
            """;

    private static final String OF_LOT = """
            SELECT r.received_at AS at, 'RECEIVED' AS way, r.quantity, r.unit_of_measure, false AS "all"
            FROM materials.receipt r WHERE r.lot = :id AND %s
            UNION ALL
            SELECT m.made_at, 'MADE_HERE', m.quantity, m.unit_of_measure, false
            FROM materials.lot_making m WHERE m.lot = :id AND %s
            UNION ALL
            SELECT m.made_at, 'WENT_INTO_OTHER_LOTS', c.quantity, c.unit_of_measure,
                   c.quantity IS NULL AND m.way IN ('MERGE', 'REGRADE', 'RELABEL')
            FROM materials.lot_component c JOIN materials.lot_making m ON m.entry = c.entry AND m.lot = c.lot
            WHERE c.component = :id AND %s
            UNION ALL
            SELECT d.discharged_at, 'WENT_INTO_OTHER_LOTS', NULL, NULL, false
            FROM materials.discharge d
            WHERE d.into_lot IS NOT NULL AND %s
              AND (d.lot = :id OR d.position IN (SELECT c.position FROM materials.charge c WHERE c.lot = :id))
              AND :id = coalesce(d.lot, (
                SELECT c.lot FROM materials.charge c
                WHERE c.position = d.position AND c.charged_at <= d.discharged_at AND %s
                ORDER BY c.charged_at DESC, c.entry DESC LIMIT 1))
            UNION ALL
            """.formatted(
                            Known.at("r.entry"),
                            Known.at("m.entry"),
                            Known.at("c.entry"),
                            Known.at("d.entry"),
                            Known.at("c.entry"))
            + CHANGED.formatted(
                    "s.lot = :id AND (s.way <> 'COUNT' OR s.container IS NULL)",
                    Known.at("s.entry"),
                    "n.container IS NULL",
                    "n.lot = :id",
                    Known.at("n.entry"))
            + "UNION ALL " + GONE.formatted("n.lot = :id AND n.container IS NULL", Known.at("n.entry"));

    private static final String OF_CONTAINER = """
            SELECT f.filled_at AS at, 'FILLED' AS way, f.quantity, f.unit_of_measure, false AS "all"
            FROM materials.container_filling f WHERE f.container = :id AND %s
            UNION ALL
            SELECT m.made_at, 'WENT_INTO_OTHER_LOTS', c.quantity, c.unit_of_measure, false
            FROM materials.lot_component c JOIN materials.lot_making m ON m.entry = c.entry AND m.lot = c.lot
            WHERE c.container = :id AND %s
            UNION ALL
            """.formatted(Known.at("f.entry"), Known.at("c.entry"))
            + CHANGED.formatted(
                    "s.container = :id", Known.at("s.entry"), "true", "n.container = :id", Known.at("n.entry"))
            + "UNION ALL " + GONE.formatted("n.container = :id", Known.at("n.entry"));

    private final JdbcClient jdbc;

    Movements(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Of each of these lots; counts of single containers tell nothing of the whole and are left out. */
    public Map<Long, List<Movement>> ofLots(Collection<Long> lots, long cutoff) {
        return ofEach(jdbc, OF_LOT, lots, cutoff);
    }

    /** Of each of these containers. */
    public Map<Long, List<Movement>> ofContainers(Collection<Long> containers, long cutoff) {
        return ofEach(jdbc, OF_CONTAINER, containers, cutoff);
    }

    /** The movements of each thing by a query that names the thing {@code :id}. */
    public static Map<Long, List<Movement>> ofEach(
            JdbcClient jdbc, String ofOne, Collection<Long> things, long cutoff) {
        var movement = DataClassRowMapper.newInstance(Movement.class);
        return jdbc
                .sql(
                        "SELECT thing.id AS thing, moved.* FROM unnest(cast(:ids AS bigint[])) AS thing (id) CROSS JOIN LATERAL ("
                                + ofOne.replace(":id", "thing.id") + ") moved")
                .param("ids", things.toArray(Long[]::new))
                .param("cutoff", cutoff)
                .query((row, number) -> Map.entry(row.getLong("thing"), movement.mapRow(row, number)))
                .list()
                .stream()
                .collect(Collectors.groupingBy(
                        Map.Entry::getKey, Collectors.mapping(Map.Entry::getValue, Collectors.toList())));
    }
}
