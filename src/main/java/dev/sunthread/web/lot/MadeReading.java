package dev.sunthread.web.lot;

import dev.sunthread.ledger.Known;
import java.util.List;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads what a lot was made from and what was made of it, at a cut-off. */
@Repository
class MadeReading {

    private static final int MOST = 200;

    private static final String WAY = "lower(replace(m.way, '_', ' '))";

    private final JdbcClient jdbc;

    MadeReading(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Its components; of a lot that was unloaded or recovered, where it was. */
    List<Made> from(long lot, long cutoff) {
        return read(lot, cutoff, """
                        SELECT m.made_at AS at, %s AS way, l.number AS lot,
                          coalesce(
                            (SELECT 'position ' || p.code || ' of ' || st.code FROM materials.discharge d
                             JOIN catalog.position p ON p.id = d.position JOIN catalog.station st ON st.id = p.station
                             WHERE d.entry = m.entry),
                            (SELECT 'unit ' || ui.number || ' ' || u.serial FROM production.recovery r
                             JOIN production.unit u ON u.id = r.unit JOIN catalog.item ui ON ui.id = u.item
                             WHERE r.entry = m.entry)) AS other,
                          k.label AS container, i.number AS item, coalesce(c.quantity, m.quantity) AS quantity,
                          coalesce(c.unit_of_measure, m.unit_of_measure) AS unit_of_measure, e.id AS entry
                        FROM materials.lot_making m JOIN ledger.entry e ON e.number = m.entry
                        LEFT JOIN materials.lot_component c ON c.entry = m.entry AND c.lot = m.lot
                        LEFT JOIN materials.lot l ON l.id = c.component
                        LEFT JOIN materials.container k ON k.id = c.container
                        LEFT JOIN catalog.item i ON i.id = m.item
                        WHERE m.lot = :lot AND %s ORDER BY m.made_at, m.entry, c.ordinal LIMIT :most
                        """.formatted(WAY, Known.at("m.entry")));
    }

    /** The lots that were made of it. */
    List<Made> into(long lot, long cutoff) {
        return read(lot, cutoff, """
                        SELECT m.made_at AS at, %s AS way, l.number AS lot, NULL AS other, k.label AS container,
                          i.number AS item, c.quantity, c.unit_of_measure, e.id AS entry
                        FROM materials.lot_component c JOIN materials.lot_making m ON m.entry = c.entry AND m.lot = c.lot
                        JOIN ledger.entry e ON e.number = m.entry JOIN materials.lot l ON l.id = m.lot
                        LEFT JOIN materials.container k ON k.id = c.container
                        LEFT JOIN catalog.item i ON i.id = m.item
                        WHERE c.component = :lot AND %s ORDER BY m.made_at, m.entry, l.number LIMIT :most
                        """.formatted(WAY, Known.at("m.entry")));
    }

    private List<Made> read(long lot, long cutoff, String sql) {
        return jdbc.sql(sql)
                .param("lot", lot)
                .param("cutoff", cutoff)
                .param("most", MOST)
                .query(DataClassRowMapper.newInstance(Made.class))
                .list();
    }
}
