package dev.sunthread.quality;

import dev.sunthread.ledger.Known;
import java.util.List;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.core.simple.JdbcClient.StatementSpec;
import org.springframework.stereotype.Service;

/** The stations that are behind: what was done there may not be recorded yet. */
@Service
public class StationsBehind {

    private static final String BEHIND = """
            SELECT e.id AS entry, st.code AS station, b.since, b.page, b.why
            FROM quality.station_behind b JOIN catalog.station st ON st.id = b.station
            JOIN ledger.entry e ON e.number = b.entry
            WHERE %s AND NOT EXISTS (
              SELECT FROM quality.station_caught_up u WHERE u.behind = b.entry AND %s)
            ORDER BY b.since, b.entry
            """;

    private final JdbcClient jdbc;

    StationsBehind(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Those that were behind as known at a cut-off, the longest first. */
    public List<StationBehind> at(long cutoff) {
        return read(jdbc.sql(BEHIND.formatted(Known.at("b.entry"), Known.at("u.entry")))
                .param("cutoff", cutoff));
    }

    /** Those that are behind by everything recorded, sealed or not. */
    public List<StationBehind> now() {
        return read(jdbc.sql(BEHIND.formatted(Known.now("b.entry"), Known.now("u.entry"))));
    }

    private static List<StationBehind> read(StatementSpec asked) {
        return asked.query(DataClassRowMapper.newInstance(StationBehind.class)).list();
    }
}
