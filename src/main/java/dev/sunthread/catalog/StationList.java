package dev.sunthread.catalog;

import dev.sunthread.access.StationCodes;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The codes of all released stations. */
@Repository
class StationList implements StationCodes {

    private final JdbcClient jdbc;

    StationList(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public List<String> all() {
        return jdbc.sql("SELECT code FROM catalog.station ORDER BY code")
                .query(String.class)
                .list();
    }
}
