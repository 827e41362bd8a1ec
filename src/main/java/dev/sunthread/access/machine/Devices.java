package dev.sunthread.access.machine;

import dev.sunthread.access.AccessLog;
import dev.sunthread.access.AccessLog.Event;
import dev.sunthread.access.Callers;
import dev.sunthread.access.Secrets;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Tablets and small computers, each chosen once for a station; only there are a badge and a PIN enough to sign in. */
@Service
public class Devices {

    /** A device that was chosen for a station. */
    public record Device(
            long id,
            String station,
            OffsetDateTime madeAt,
            String madeBy,
            @Nullable OffsetDateTime revokedAt) {}

    private final JdbcClient jdbc;
    private final AccessLog log;
    private final Callers callers;
    private final Clock clock;

    Devices(JdbcClient jdbc, AccessLog log, Callers callers, Clock clock) {
        this.jdbc = jdbc;
        this.log = log;
        this.callers = callers;
        this.clock = clock;
    }

    public List<Device> all() {
        return jdbc.sql("SELECT id, station, made_at, made_by, revoked_at FROM access.device"
                        + " ORDER BY revoked_at IS NOT NULL, station, id")
                .query(DataClassRowMapper.newInstance(Device.class))
                .list();
    }

    /** Chooses a station for a device and gives the secret that the device keeps. */
    @Transactional
    public String choose(String station) {
        String secret = Secrets.sent("");
        jdbc.sql("INSERT INTO access.device (station, hash, made_at, made_by) VALUES (?, ?, ?, ?)")
                .params(
                        station,
                        Secrets.hash(secret),
                        OffsetDateTime.now(clock),
                        callers.signedIn().mark())
                .update();
        log.note(Event.DEVICE_CHOSEN, station, null);
        return secret;
    }

    /** The station of the device that keeps this secret. */
    public Optional<String> station(@Nullable String secret) {
        return secret == null || secret.isEmpty()
                ? Optional.empty()
                : jdbc.sql("SELECT station FROM access.device WHERE hash = ? AND revoked_at IS NULL")
                        .param(Secrets.hash(secret))
                        .query(String.class)
                        .optional();
    }

    /** Ends a device, at which nobody can sign in by badge from then on; does nothing if it is ended. */
    @Transactional
    public void revoke(long id) {
        jdbc.sql("UPDATE access.device SET revoked_at = ? WHERE id = ? AND revoked_at IS NULL RETURNING station")
                .params(OffsetDateTime.now(clock), id)
                .query(String.class)
                .optional()
                .ifPresent(station -> log.note(Event.DEVICE_REVOKED, station, null));
    }
}
