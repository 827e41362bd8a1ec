package dev.sunthread.access;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What persons did that is not in the ledger: signing in and out, changing accounts, taking records out or in. */
@Repository
public class AccessLog {

    /** What can happen. */
    public enum Event {
        SIGNED_IN,
        SIGN_IN_REFUSED,
        SIGNED_OUT,
        SIGNED_AT_STATION,
        SESSION_ENDED,
        PERSON_ADDED,
        PERSON_CHANGED,
        PERSON_BLOCKED,
        PERSON_UNBLOCKED,
        PERSON_BLANKED,
        PASSWORD_CHANGED,
        PASSWORD_RESET,
        PIN_CHANGED,
        BADGE_GIVEN,
        BADGE_TAKEN,
        QUALIFICATION_GIVEN,
        QUALIFICATION_WITHDRAWN,
        TOKEN_MADE,
        TOKEN_REVOKED,
        DEVICE_CHOSEN,
        DEVICE_REVOKED,
        EXPORTED,
        IMPORTED,
        RESTORED;

        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** A line of the log; marks, never names. */
    public record Line(
            long number,
            OffsetDateTime at,
            String what,
            @Nullable String actor,
            @Nullable String about,
            @Nullable String detail) {

        /** What happened as one small word, for texts. */
        public String word() {
            return Event.valueOf(what).word();
        }
    }

    private final JdbcClient jdbc;
    private final Callers callers;
    private final Clock clock;

    AccessLog(JdbcClient jdbc, Callers callers, Clock clock) {
        this.jdbc = jdbc;
        this.callers = callers;
        this.clock = clock;
    }

    /** Notes that the caller did something, to whom or what, and more about it. */
    public void note(Event event, @Nullable String about, @Nullable String detail) {
        noteOf(callers.mark(), event, about, detail);
    }

    /** Notes that somebody did something; nobody is named where it is not known who it was. */
    public void noteOf(@Nullable String actor, Event event, @Nullable String about, @Nullable String detail) {
        jdbc.sql("INSERT INTO access.log (at, what, actor, about, detail) VALUES (?, ?, ?, ?, ?)")
                .params(OffsetDateTime.now(clock), event.name())
                .param(actor)
                .param(about)
                .param(detail)
                .update();
    }

    public long count() {
        return jdbc.sql("SELECT count(*) FROM access.log").query(Long.class).single();
    }

    /** The newest lines first. */
    public List<Line> latest(long offset, int most) {
        return jdbc.sql("SELECT number, at, what, actor, about, detail FROM access.log ORDER BY number DESC"
                        + " OFFSET ? LIMIT ?")
                .params(offset, most)
                .query(DataClassRowMapper.newInstance(Line.class))
                .list();
    }
}
