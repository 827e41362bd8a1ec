package dev.sunthread.station.contact;

import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Which page of each device is open, how many scans it keeps, and when it last kept nothing. */
@Repository
public class PageContacts {

    /** A page that may keep scans, with when it last kept nothing. */
    public record Late(UUID page, String station, String person, OffsetDateTime caughtUpAt) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    PageContacts(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** A device opened its page for a person; it can say from now on that it is there. */
    public void opened(UUID page, String station, String person) {
        jdbc.sql("""
                        INSERT INTO station.page (page, station, person, kept, is_open, caught_up_at)
                        VALUES (:page, :station, :person, 0, false, :now)
                        ON CONFLICT (page) DO UPDATE SET station = :station, person = :person
                        """)
                .param("page", page)
                .param("station", station)
                .param("person", person)
                .param("now", OffsetDateTime.now(clock))
                .update();
    }

    /**
     * A page says that it is there, or that it closes; gives its station, and nothing of a page that nobody opened.
     *
     * @param at when it counted what it keeps, by the server's clock as it last heard it; absent if it can't tell. What it
     *     says may come late
     */
    public Optional<String> heard(UUID page, int kept, boolean closing, @Nullable OffsetDateTime at) {
        return jdbc.sql("""
                        UPDATE station.page SET kept = :kept, is_open = NOT :closing,
                          caught_up_at = CASE WHEN :kept = 0 THEN :now ELSE caught_up_at END,
                          nothing_kept_at = CASE WHEN :kept = 0
                            THEN greatest(nothing_kept_at, least(cast(:at AS timestamptz), :now)) ELSE nothing_kept_at END
                        WHERE page = :page RETURNING station
                        """)
                .param("page", page)
                .param("now", OffsetDateTime.now(clock))
                .param("kept", kept)
                .param("closing", closing)
                .param("at", at)
                .query(String.class)
                .optional();
    }

    /** The pages that did not say for so long that they keep nothing, and of which that is not recorded yet. */
    public List<Late> late(Duration limit) {
        return jdbc.sql("""
                        SELECT p.page, p.station, p.person, p.caught_up_at FROM station.page p
                        WHERE (p.is_open OR p.kept > 0) AND p.caught_up_at < ?
                          AND EXISTS (SELECT FROM catalog.station s WHERE s.code = p.station)
                          AND NOT EXISTS (
                            SELECT FROM quality.station_behind b WHERE b.page = p.page AND b.since = p.caught_up_at)
                        """)
                .param(OffsetDateTime.now(clock).minus(limit))
                .query(DataClassRowMapper.newInstance(Late.class))
                .list();
    }

    /** Whether a page kept nothing at some time after this one. */
    public boolean hasCaughtUpSince(UUID page, OffsetDateTime time) {
        return jdbc.sql("SELECT EXISTS (SELECT FROM station.page WHERE page = ? AND caught_up_at > ?)")
                .params(page, time)
                .query(Boolean.class)
                .single();
    }
}
