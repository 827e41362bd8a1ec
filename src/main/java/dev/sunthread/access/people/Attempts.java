package dev.sunthread.access.people;

import dev.sunthread.access.AccessProperties;
import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Counts attempts to sign in, in the database, so that it does not matter at which instance they are made. An attempt
 * counts as failed from its beginning until it succeeds: many at once are no way around the delay.
 */
@Repository
class Attempts {

    private static final Duration REMEMBERED = Duration.ofDays(1);
    private static final int MOST_DOUBLINGS = 20;

    private static final String BEGIN = """
            INSERT INTO access.attempt AS a (subject, failures, last_at) VALUES (:subject, 1, :now)
            ON CONFLICT (subject) DO UPDATE SET last_at = :now, failures = a.failures + 1,
              blocked_until = CASE WHEN a.failures + 1 < :after THEN NULL
                ELSE :now + least(:longest, :first * 2 ^ least(a.failures + 1 - :after, :doublings)) * interval '1 second' END
            WHERE a.blocked_until IS NULL OR a.blocked_until <= :now
            """;

    private final JdbcClient jdbc;
    private final Clock clock;
    private final AccessProperties.LockOut delays;

    Attempts(JdbcClient jdbc, Clock clock, AccessProperties properties) {
        this.jdbc = jdbc;
        this.clock = clock;
        this.delays = properties.lockOut();
    }

    /**
     * Begins an attempt.
     *
     * @throws TryLater if there were too many
     */
    @Transactional(propagation = Propagation.REQUIRES_NEW)
    public void begin(String subject) {
        OffsetDateTime now = OffsetDateTime.now(clock);
        jdbc.sql("DELETE FROM access.attempt WHERE last_at < ?")
                .param(now.minus(REMEMBERED))
                .update();
        int begun = jdbc.sql(BEGIN)
                .param("subject", subject)
                .param("now", now)
                .param("after", delays.after())
                .param("first", delays.first().toSeconds())
                .param("longest", delays.longest().toSeconds())
                .param("doublings", MOST_DOUBLINGS)
                .update();
        if (begun == 0) {
            throw new TryLater(remaining(subject, now));
        }
    }

    private Duration remaining(String subject, OffsetDateTime now) {
        return jdbc.sql("SELECT blocked_until FROM access.attempt WHERE subject = ?")
                .param(subject)
                .query(OffsetDateTime.class)
                .optional()
                .map(until -> Duration.between(now, until))
                .filter(wait -> !wait.isNegative())
                .orElse(Duration.ZERO);
    }

    /** Says that the attempt succeeded, so that nothing is counted any longer. */
    void succeeded(String subject) {
        jdbc.sql("DELETE FROM access.attempt WHERE subject = ?").param(subject).update();
    }
}
