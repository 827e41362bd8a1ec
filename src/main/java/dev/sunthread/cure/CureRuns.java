package dev.sunthread.cure;

import dev.sunthread.ledger.Known;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Numbers of cure runs; a number that is named is known from then on. */
@Repository
public class CureRuns {

    private final JdbcClient jdbc;

    CureRuns(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The internal number of a run, if it was ever named. */
    public Optional<Long> find(String number) {
        return jdbc.sql("SELECT id FROM cure.run WHERE number = ?")
                .param(number)
                .query(Long.class)
                .optional();
    }

    /** The internal number of a run, known from now on, for one writer at a time. */
    long locked(String number) {
        return jdbc.sql("INSERT INTO cure.run (number) VALUES (?) ON CONFLICT (number) DO NOTHING RETURNING id")
                .param(number)
                .query(Long.class)
                .optional()
                .orElseGet(() -> lockedBefore(number));
    }

    private long lockedBefore(String number) {
        return jdbc.sql("SELECT id FROM cure.run WHERE number = ? FOR UPDATE")
                .param(number)
                .query(Long.class)
                .single();
    }

    /** Whether a load is recorded under the run. */
    boolean isRecorded(long run) {
        return jdbc.sql("SELECT 1 FROM cure.run_record r WHERE r.run = :run AND " + Known.now("r.entry") + " LIMIT 1")
                .param("run", run)
                .query(Integer.class)
                .optional()
                .isPresent();
    }
}
