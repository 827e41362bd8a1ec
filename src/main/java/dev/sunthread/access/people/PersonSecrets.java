package dev.sunthread.access.people;

import java.time.Clock;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What persons prove themselves by, kept as hashes only. Whatever changes is remembered with its time. */
@Repository
class PersonSecrets {

    /** What only the person knows. */
    enum Secret {
        PASSWORD("password_hash"),
        PIN("pin_hash");

        private final String column;

        Secret(String column) {
            this.column = column;
        }
    }

    private final SlowHash slow;
    private final JdbcClient jdbc;
    private final Clock clock;

    PersonSecrets(SlowHash slow, JdbcClient jdbc, Clock clock) {
        this.slow = slow;
        this.jdbc = jdbc;
        this.clock = clock;
    }

    void setPassword(long person, String password, boolean mustChange) {
        jdbc.sql("UPDATE access.person SET password_hash = ?, must_change = ?, secrets_changed_at = ? WHERE id = ?")
                .params(slow.of(password), mustChange, OffsetDateTime.now(clock), person)
                .update();
    }

    void setPin(long person, String pin) {
        jdbc.sql("UPDATE access.person SET pin_hash = ?, secrets_changed_at = ? WHERE id = ?")
                .params(slow.of(pin), OffsetDateTime.now(clock), person)
                .update();
    }

    void setBadge(long person, byte @Nullable [] hash, @Nullable String ending) {
        jdbc.sql("UPDATE access.person SET badge_hash = ?, badge_ending = ?, secrets_changed_at = ? WHERE id = ?")
                .param(hash)
                .param(ending)
                .params(OffsetDateTime.now(clock), person)
                .update();
    }

    /** Whether a text is the secret of a person; takes as long where there is no such person or no secret. */
    boolean fits(@Nullable Person person, Secret secret, String text) {
        return slow.fits(text, person == null ? null : hash(person.id(), secret));
    }

    /** The same password under a costlier hash, if its own was made at a lower cost; nobody has to sign in anew for that. */
    void strengthen(long person, String password) {
        String known = hash(person, Secret.PASSWORD);
        if (known != null && slow.isWeak(known)) {
            jdbc.sql("UPDATE access.person SET password_hash = ? WHERE id = ?")
                    .params(slow.of(password), person)
                    .update();
        }
    }

    private @Nullable String hash(long person, Secret secret) {
        return jdbc.sql("SELECT coalesce(" + secret.column + ", '') FROM access.person WHERE id = ?")
                .param(person)
                .query(String.class)
                .optional()
                .filter(hash -> !hash.isEmpty())
                .orElse(null);
    }
}
