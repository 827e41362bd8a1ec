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

    /** A scan and what was said of it. */
    record Last(String text, OffsetDateTime at, Verdict verdict) {}

    /** What a person at a station scanned last. */
    Optional<Last> last(String station, String person) {
        return jdbc.sql("""
                        SELECT text, scanned_at, verdict FROM station.scan WHERE station = ? AND person = ?
                        ORDER BY received_at DESC LIMIT 1
                        """)
                .params(station, person)
                .query((row, number) -> new Last(
                        row.getString(1),
                        row.getObject(2, OffsetDateTime.class),
                        json.readValue(row.getString(3), Verdict.class)))
                .optional();
    }

    void keep(String station, String person, Scan scan, Verdict verdict) {
        jdbc.sql("""
                        INSERT INTO station.scan
                          (id, station, person, text, scanned_at, received_at, was_kept, verdict, page, sequence, earliest)
                        VALUES (?, ?, ?, ?, ?, ?, ?, cast(? AS jsonb), ?, ?, ?)
                        """)
                .params(scan.id(), station, person, scan.text(), scan.at())
                .params(OffsetDateTime.now(clock), scan.kept(), json.writeValueAsString(verdict))
                .param(scan.place() == null ? null : scan.place().page())
                .param(scan.place() == null ? null : scan.place().sequence())
                .param(scan.within() == null ? scan.at() : scan.within().from())
                .update();
    }
}
