package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.line.LineDoubts;
import dev.sunthread.genealogy.records.LineRecords;
import dev.sunthread.genealogy.records.Making;
import dev.sunthread.genealogy.records.Unfilled;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Reads the containers whose filling is not recorded, as known at a cut-off. What surely was filled is left out first,
 * so that of the many others little is read.
 */
final class ContainerHistory {

    /** Records that name a container, most of them with the lot it is of; uses are many, and looked up. */
    private static final String NAMED = """
            SELECT c.entry, c.lot, c.container, c.charged_at AS at FROM materials.charge c WHERE c.container IS NOT NULL
            UNION ALL SELECT e.entry, e.lot, e.container, e.ended_at FROM materials.lot_ending e WHERE e.container IS NOT NULL
            UNION ALL SELECT k.entry, k.lot, k.container, k.changed_at FROM materials.stock_change k
              WHERE k.container IS NOT NULL
            UNION ALL SELECT p.entry, p.component, p.container, m.made_at FROM materials.lot_component p
              JOIN materials.lot_making m USING (entry, lot) WHERE p.container IS NOT NULL
            """;

    private static final String USED = """
            SELECT u.entry, u.lot, u.container, s.ended_at, u.item
            FROM bare b JOIN production.step_use u ON u.container = b.id JOIN production.step s USING (entry)
            """;

    private static final String SURELY_FILLED = """
            SELECT FROM materials.container_filling f CROSS JOIN line LEFT JOIN ledger.withdrawal w ON w.target = f.entry
            WHERE %s AND f.container =
            """.formatted(SurelyKnown.at("f.entry"));

    private static final String BARE =
            "WITH %s, bare AS MATERIALIZED (SELECT c.id FROM materials.container c WHERE NOT EXISTS (%s c.id))"
                    .formatted(SurelyKnown.LINE, SURELY_FILLED);

    private static final String LABELLED = """
            %1$s,
            named AS (%2$s UNION ALL SELECT entry, lot, container, ended_at FROM (%3$s) u WHERE lot IS NOT NULL),
            open AS MATERIALIZED (SELECT * FROM named n
              WHERE NOT EXISTS (%4$s n.container AND f.lot = n.lot AND f.filled_at <= n.at))
            SELECT n.lot, n.container, max(%5$s), max(n.entry) FROM open n WHERE %6$s AND NOT EXISTS (
              SELECT FROM materials.container_filling f
              WHERE f.container = n.container AND f.lot = n.lot AND f.filled_at <= n.at AND %7$s)
            GROUP BY n.lot, n.container
            """.formatted(
                    BARE, NAMED, USED, SURELY_FILLED, Sql.micros("n.at"), Known.at("n.entry"), Known.at("f.entry"));

    private static final String UNFILLED = """
            %1$s,
            named AS (
              SELECT n.*, NULL::bigint AS item FROM bare b JOIN (%2$s) n ON n.container = b.id
              UNION ALL %3$s
              UNION ALL SELECT o.entry, NULL, o.container, o.opened_at, NULL
                FROM bare b JOIN materials.container_opening o ON o.container = b.id
              UNION ALL SELECT v.entry, NULL, v.container, v.moved_at, NULL
                FROM bare b JOIN materials.container_move v ON v.container = b.id)
            SELECT n.container, max(%4$s),
              array_agg(DISTINCT coalesce(n.item, o.item)) FILTER (WHERE coalesce(n.item, o.item) IS NOT NULL)
            FROM named n LEFT JOIN materials.lot_origin o ON o.lot = n.lot AND %5$s
            WHERE %6$s AND NOT EXISTS (
              SELECT FROM materials.container_filling f WHERE f.container = n.container AND %7$s)
            GROUP BY n.container
            """.formatted(
            BARE, NAMED, USED, Sql.micros("n.at"), Known.at("o.entry"), Known.at("n.entry"), Known.at("f.entry"));

    private final JdbcClient jdbc;
    private final long cutoff;
    private final LineRecords lines;
    private final Clocks clocks;

    ContainerHistory(JdbcClient jdbc, long cutoff, Clocks clocks, LineRecords lines) {
        this.lines = lines;
        this.jdbc = jdbc;
        this.cutoff = cutoff;
        this.clocks = clocks;
    }

    List<Making> labelled() {
        return jdbc.sql(LABELLED)
                .param("cutoff", cutoff)
                .param("doubtedFrom", LineDoubts.takenBackFrom(lines.open()))
                .query((row, number) -> Making.labelled(
                        row.getLong(4),
                        row.getLong(1),
                        TraceRef.container(row.getLong(2)),
                        clocks.told(null, row.getLong(3))))
                .list();
    }

    List<Unfilled> unfilled() {
        return jdbc.sql(UNFILLED)
                .param("cutoff", cutoff)
                .param("doubtedFrom", LineDoubts.takenBackFrom(lines.open()))
                .query((row, number) ->
                        new Unfilled(row.getLong(1), Sql.numbers(row, 3), clocks.told(null, row.getLong(2))))
                .list();
    }
}
