package dev.sunthread.station.work;

import dev.sunthread.ledger.Known;
import dev.sunthread.station.Stops;
import java.util.List;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What is loaded at stations now, by state. */
@Repository
public class StationLoads {

    /** What is loaded where; the earliest reason of a hold on its lot or container with it. */
    private static final String LOADED =
            """
            SELECT st.code AS station, p.code AS position, l.number AS lot, k.label AS container, l.id AS lot_id, k.id AS container_id,
              (SELECT CASE WHEN count(DISTINCT o.item) = 1 THEN min(i.number) END
               FROM materials.lot_origin o JOIN catalog.item i ON i.id = o.item WHERE o.lot = l.id) AS item,
              lower(d.during) AS since,
              (SELECT min(o.expires_at) FROM materials.lot_origin o WHERE o.lot = l.id AND %s) AS expires_at,
              (SELECT h.reason FROM holds.hold h
               WHERE (h.kind = 'LOT' AND h.subject = l.id OR h.kind = 'CONTAINER' AND h.subject = k.id) AND %s
                 AND NOT EXISTS (SELECT FROM holds.release r
                   WHERE r.hold_entry = h.entry AND r.hold_ordinal = h.ordinal AND %s)
               ORDER BY h.entry LIMIT 1) AS hold
            FROM materials.loaded d JOIN catalog.position p ON p.id = d.position JOIN catalog.station st ON st.id = p.station
            JOIN materials.charge c ON c.entry = d.entry JOIN materials.lot l ON l.id = d.lot
            LEFT JOIN materials.container k ON k.id = c.container
            WHERE upper_inf(d.during) AND (cast(:station AS text) IS NULL OR st.code = :station)
            ORDER BY st.code, p.code
            """.formatted(Known.now("o.entry"), Known.now("h.entry"), Known.now("r.entry"));

    private final JdbcClient jdbc;

    StationLoads(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    public List<Loaded> at(String station) {
        return jdbc.sql(LOADED)
                .param("station", station)
                .query(DataClassRowMapper.newInstance(Loaded.class))
                .list();
    }

    /** Everything on hold that nobody has confirmed to have taken off, at any station. */
    public List<Stops.Stop> stops() {
        return jdbc.sql("SELECT station, position, lot, hold AS reason FROM (" + LOADED + ") x WHERE hold IS NOT NULL")
                .param("station", null)
                .query(DataClassRowMapper.newInstance(Stops.Stop.class))
                .list();
    }

    List<String> positions(String station) {
        return jdbc.sql("""
                        SELECT p.code FROM catalog.position p JOIN catalog.station s ON s.id = p.station
                        WHERE s.code = ? ORDER BY p.code
                        """).param(station).query(String.class).list();
    }
}
