package dev.sunthread.station;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.databind.json.JsonMapper;

/** Every scan with what was said of it. */
@Repository
class TakenScans {

    private final JsonMapper json;
    private final JdbcClient jdbc;
    private final Clock clock;

    TakenScans(JsonMapper json, JdbcClient jdbc, Clock clock) {
        this.json = json;
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** What was said of a scan when it came first. */
    Optional<Verdict> verdict(String id) {
        return jdbc.sql("SELECT verdict FROM station.scan WHERE id = ?")
                .param(id)
                .query(String.class)
                .optional()
                .map(verdict -> json.readValue(verdict, Verdict.class));
    }

    /** What was said last to a person at a station. */
    Optional<Verdict> last(String station, String person) {
        return jdbc.sql("""
                        SELECT verdict FROM station.scan WHERE station = ? AND person = ?
                        ORDER BY received_at DESC LIMIT 1
                        """)
                .params(station, person)
                .query(String.class)
                .optional()
                .map(verdict -> json.readValue(verdict, Verdict.class));
    }

    void keep(String station, String person, Scan scan, Verdict verdict) {
        jdbc.sql("""
                        INSERT INTO station.scan
                          (id, station, person, text, scanned_at, received_at, was_kept, verdict)
                        VALUES (?, ?, ?, ?, ?, ?, ?, cast(? AS jsonb))
                        """)
                .params(scan.id(), station, person, scan.text().replace('\0', ' '), scan.at())
                .params(OffsetDateTime.now(clock), scan.kept(), json.writeValueAsString(verdict))
                .update();
    }
}
