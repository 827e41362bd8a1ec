package dev.sunthread.catalog;

import dev.sunthread.ledger.body.Unreadable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Released stations and their positions, by code. */
@Repository
public class Stations {

    private final JdbcClient jdbc;

    Stations(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The station that a body names. @throws Unreadable if it was never released */
    public Station named(String code, String field) {
        return jdbc.sql("SELECT id, code FROM catalog.station WHERE code = ?")
                .param(code)
                .query(Station.class)
                .optional()
                .orElseThrow(() -> Unreadable.at(
                        field,
                        "names station \"" + code + "\", which is not released",
                        "Release the station first or correct its code"));
    }

    /** The position on a station. @throws Unreadable if the station never had it */
    public Position position(String station, String position, String field) {
        return jdbc.sql("""
                        SELECT p.id, p.station, s.code AS station_code, p.code
                        FROM catalog.position p JOIN catalog.station s ON s.id = p.station
                        WHERE s.code = ? AND p.code = ?
                        """)
                .params(station, position)
                .query(Position.class)
                .optional()
                .orElseThrow(() -> Unreadable.at(
                        field,
                        "names position \"" + position + "\", which station \"" + station + "\" does not have",
                        "Release the station with this position or correct the name"));
    }

    long register(String code) {
        jdbc.sql("INSERT INTO catalog.station (code) VALUES (?) ON CONFLICT (code) DO NOTHING")
                .param(code)
                .update();
        return named(code, "body.station").id();
    }

    void registerPosition(long station, String code) {
        jdbc.sql("INSERT INTO catalog.position (station, code) VALUES (?, ?) ON CONFLICT DO NOTHING")
                .params(station, code)
                .update();
    }
}
