package dev.sunthread.production.balance;

import dev.sunthread.ledger.Known;
import dev.sunthread.materials.Charges;
import dev.sunthread.materials.stock.Movement;
import dev.sunthread.materials.stock.Movements;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * What went into units of a lot or container, as known at a cut-off: as scanned, or, where nothing was scanned, as
 * loaded at the position from which the step took it when it ended.
 */
@Repository
class Uses {

    private static final String USED = """
            SELECT s.ended_at AS at, 'USED' AS way,
                   su.quantity * (SELECT count(*) FROM production.step_unit sn WHERE sn.entry = s.entry) AS quantity,
                   su.unit_of_measure, false AS "all"
            FROM production.step_use su JOIN production.step s USING (entry)
            """;

    private static final String SCANNED = USED + "WHERE su.%s = :id AND " + Known.at("s.entry");

    // OFFSET 0: the end of each charge is looked for once, not once for each step at its position
    private static final String LOADED = USED + """
            JOIN (SELECT * FROM (%s) c WHERE c.%s = :id OFFSET 0) h
              ON h.position = su.position AND s.ended_at >= h.charged_at AND (h.until IS NULL OR s.ended_at < h.until)
            WHERE %s AND %s
            """;

    private static final String OF_LOT = SCANNED.formatted("lot")
            + " UNION ALL "
            + LOADED.formatted(Charges.KNOWN, "lot", """
                    su.lot IS NULL AND coalesce(su.item = (
                      SELECT o.item FROM materials.lot_origin o
                      WHERE o.lot = :id AND o.item IS NOT NULL AND %s ORDER BY o.entry DESC LIMIT 1), true)
                    """.formatted(Known.at("o.entry")), Known.at("s.entry"))
            + """
             UNION ALL
            SELECT n.installed_at, 'USED', n.quantity, n.unit_of_measure, false
            FROM production.installation n WHERE n.child_lot = :id AND %s
            """.formatted(Known.at("n.entry"));

    private static final String OF_CONTAINER = SCANNED.formatted("container")
            + " UNION ALL "
            + LOADED.formatted(
                    Charges.KNOWN,
                    "container",
                    "su.container IS NULL AND coalesce(su.lot, h.lot) = h.lot",
                    Known.at("s.entry"));

    private final JdbcClient jdbc;

    Uses(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Map<Long, List<Movement>> ofLots(Collection<Long> lots, long cutoff) {
        return Movements.ofEach(jdbc, OF_LOT, lots, cutoff);
    }

    Map<Long, List<Movement>> ofContainers(Collection<Long> containers, long cutoff) {
        return Movements.ofEach(jdbc, OF_CONTAINER, containers, cutoff);
    }
}
