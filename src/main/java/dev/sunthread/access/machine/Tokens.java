package dev.sunthread.access.machine;

import dev.sunthread.access.AccessLog;
import dev.sunthread.access.AccessLog.Event;
import dev.sunthread.access.Caller;
import dev.sunthread.access.Callers;
import dev.sunthread.access.Right;
import dev.sunthread.access.Secrets;
import dev.sunthread.access.Words;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Tokens by which machines are known, one for each station or interface; the secret is said once and not kept. */
@Service
public class Tokens {

    private static final String TOKEN =
            "SELECT t.id, t.mark, t.purpose, t.station, array_to_string(t.rights, ' ') AS right_names,"
                    + " t.made_at, t.made_by, t.valid_until, t.revoked_at, t.last_used_at FROM access.token t";

    private final JdbcClient jdbc;
    private final AccessLog log;
    private final Callers callers;
    private final Words words;
    private final Clock clock;

    Tokens(JdbcClient jdbc, AccessLog log, Callers callers, Words words, Clock clock) {
        this.jdbc = jdbc;
        this.log = log;
        this.callers = callers;
        this.words = words;
        this.clock = clock;
    }

    public List<Token> all() {
        return jdbc.sql(TOKEN + " ORDER BY t.revoked_at IS NOT NULL, t.mark")
                .query(DataClassRowMapper.newInstance(Token.class))
                .list();
    }

    /** Makes a token and says its secret this once. @throws Refused if its mark is taken or it may do nothing */
    @Transactional
    public String make(TokenWords said) {
        if (said.rights().isEmpty() || !said.rights().stream().allMatch(Right::isForMachines)) {
            throw words.refused("token-rights");
        }
        OffsetDateTime now = OffsetDateTime.now(clock);
        if (said.validUntil() != null && !said.validUntil().isAfter(now)) {
            throw words.refused("token-over");
        }
        takeMark(said.mark());
        String secret = Secrets.sent("sun_");
        jdbc.sql("INSERT INTO access.token (mark, purpose, station, rights, hash, made_at, made_by, valid_until)"
                        + " VALUES (?, ?, ?, ?, ?, ?, ?, ?)")
                .params(said.mark(), said.purpose())
                .param(said.station())
                .param(said.rights().stream().map(Right::name).toArray(String[]::new))
                .params(Secrets.hash(secret), now, callers.signedIn().mark())
                .param(said.validUntil())
                .update();
        log.note(Event.TOKEN_MADE, said.mark(), said.purpose());
        return secret;
    }

    private void takeMark(String mark) {
        if (!mark.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,31}")) {
            throw words.refused("mark-form");
        }
        if (jdbc.sql("INSERT INTO access.mark (mark) VALUES (?) ON CONFLICT DO NOTHING")
                        .param(mark)
                        .update()
                == 0) {
            throw words.refused("mark-taken", mark);
        }
    }

    /** Ends a token from the next request on; does nothing if it is ended. */
    @Transactional
    public void revoke(long id) {
        jdbc.sql("UPDATE access.token SET revoked_at = ? WHERE id = ? AND revoked_at IS NULL RETURNING mark")
                .params(OffsetDateTime.now(clock), id)
                .query(String.class)
                .optional()
                .ifPresent(mark -> log.note(Event.TOKEN_REVOKED, mark, null));
    }

    /** The machine that has this secret; empty if none has it or its token is over. */
    public Optional<Caller> caller(String secret) {
        OffsetDateTime now = OffsetDateTime.now(clock);
        Optional<Token> token = jdbc.sql(TOKEN + " WHERE t.hash = ?")
                .param(Secrets.hash(secret))
                .query(DataClassRowMapper.newInstance(Token.class))
                .optional()
                .filter(found -> found.isValid(now));
        token.ifPresent(found -> noteUse(found, now));
        return token.map(Token::caller);
    }

    /** Once a minute is enough to see whether a token is still in use. */
    private void noteUse(Token token, OffsetDateTime now) {
        OffsetDateTime last = token.lastUsedAt();
        if (last == null || last.isBefore(now.minusMinutes(1))) {
            jdbc.sql("UPDATE access.token SET last_used_at = ? WHERE id = ?")
                    .params(now, token.id())
                    .update();
        }
    }
}
