package dev.sunthread.station.work;

import java.time.Clock;
import java.time.OffsetDateTime;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.databind.json.JsonMapper;

/** Keeps what each person has in hand at each station, so that any instance goes on where another left off. */
@Repository
public class Works {

    private final JsonMapper json;
    private final JdbcClient jdbc;
    private final Clock clock;

    Works(JsonMapper json, JdbcClient jdbc, Clock clock) {
        this.json = json;
        this.jdbc = jdbc;
        this.clock = clock;
    }

    public Work of(String station, String person) {
        return read("SELECT state FROM station.work WHERE station = ? AND person = ?", station, person);
    }

    /** The same for one who will change it, while others wait. */
    public Work locked(String station, String person) {
        jdbc.sql("""
                        INSERT INTO station.work (station, person, state, before, changed_at)
                        VALUES (:station, :person, cast(:nothing AS jsonb), cast(:nothing AS jsonb), :now)
                        ON CONFLICT DO NOTHING
                        """)
                .param("station", station)
                .param("person", person)
                .param("nothing", json.writeValueAsString(Work.NOTHING))
                .param("now", OffsetDateTime.now(clock))
                .update();
        return read("SELECT state FROM station.work WHERE station = ? AND person = ? FOR UPDATE", station, person);
    }

    private Work read(String sql, String station, String person) {
        return jdbc.sql(sql)
                .params(station, person)
                .query(String.class)
                .optional()
                .map(state -> json.readValue(state, Work.class))
                .orElse(Work.NOTHING);
    }

    /** What was in hand before the last scan that changed it. */
    public Work before(String station, String person) {
        return read("SELECT before FROM station.work WHERE station = ? AND person = ?", station, person);
    }

    /** Keeps what is in hand, and what was before it. */
    public void keep(String station, String person, Work work, Work before) {
        jdbc.sql("""
                        UPDATE station.work SET state = cast(? AS jsonb), before = cast(? AS jsonb), changed_at = ?
                        WHERE station = ? AND person = ?
                        """)
                .params(json.writeValueAsString(work), json.writeValueAsString(before), OffsetDateTime.now(clock))
                .params(station, person)
                .update();
    }
}
