package dev.sunthread.catalog;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Writes where and when an operation of a route may be done, and what can hurt there. */
@Component
class RouteTerms {

    private final Stations stations;
    private final JdbcClient jdbc;

    RouteTerms(Stations stations, JdbcClient jdbc) {
        this.stations = stations;
        this.jdbc = jdbc;
    }

    void record(long entry, RouteOperation operation, String path) {
        for (String station : operation.stations()) {
            insert("route_station (entry, operation, station)", entry, operation)
                    .param(stations.named(station, path + ".stations").id())
                    .update();
        }
        for (Caution caution : operation.cautions()) {
            insert("route_caution (entry, operation, caution)", entry, operation)
                    .param(caution.name())
                    .update();
        }
        operation.windows().forEach(window -> record(entry, operation, window));
    }

    private JdbcClient.StatementSpec insert(String table, long entry, RouteOperation operation) {
        return jdbc.sql("INSERT INTO catalog." + table + " VALUES (?, ?, ?) ON CONFLICT DO NOTHING")
                .params(entry, operation.operation());
    }

    private void record(long entry, RouteOperation operation, RouteWindow window) {
        jdbc.sql("INSERT INTO catalog.route_window (entry, operation, after, at_least, at_most) VALUES (?, ?, ?, ?, ?)")
                .params(entry, operation.operation(), window.after())
                .param(window.atLeast())
                .param(window.atMost())
                .update();
    }
}
