package dev.sunthread.ledger;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Gives committed entries consecutive positions without making writers wait: within a second by itself, at once when an
 * answer asks. Any number of instances may seal; a lock in the database lets one at a time do it.
 */
@Service
public class Sealer {

    /** Any number, the same in every instance. */
    private static final long LOCK = 7_305_114_883L;

    /*
     * The stamp is drawn when an entry is complete, after it waited for everything it depends on, so that the order of
     * stamps within what is committed puts nothing before what it depends on.
     */
    private static final String SEAL = """
            WITH waiting AS (DELETE FROM ledger.unsealed RETURNING stamp, entry),
            last AS (SELECT coalesce(max(position), 0) AS position FROM ledger.position)
            INSERT INTO ledger.position (position, entry)
            SELECT last.position + row_number() OVER (ORDER BY waiting.stamp), waiting.entry FROM waiting, last
            """;

    private final JdbcClient jdbc;
    private final TransactionTemplate alone;

    Sealer(JdbcClient jdbc, PlatformTransactionManager transactions) {
        this.jdbc = jdbc;
        this.alone = new TransactionTemplate(transactions);
        // whoever waits for the lock waits for the sealing alone, whatever the caller's transaction goes on to do
        alone.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
        alone.setIsolationLevel(TransactionDefinition.ISOLATION_READ_COMMITTED);
    }

    /**
     * Seals what is committed, in a transaction of its own, and gives the last position: the cut-off of an answer asked
     * for now. Takes no lock where all is sealed.
     */
    public long seal() {
        sealWaiting();
        return last();
    }

    /** The last position sealed so far, nought if there is none. */
    public long last() {
        return jdbc.sql("SELECT coalesce(max(position), 0) FROM ledger.position")
                .query(Long.class)
                .single();
    }

    @Scheduled(fixedDelayString = "${sunthread.ledger.seal-every:500ms}")
    void sealWaiting() {
        if (anyWaits()) {
            alone.executeWithoutResult(status -> sealLocked());
        }
    }

    private boolean anyWaits() {
        return jdbc.sql("SELECT 1 FROM ledger.unsealed LIMIT 1")
                .query(Integer.class)
                .optional()
                .isPresent();
    }

    // a statement sees what is committed when it begins, so the lock is a statement before
    void sealLocked() {
        jdbc.sql("SELECT pg_advisory_xact_lock(?)").param(LOCK).query().listOfRows();
        jdbc.sql(SEAL).update();
    }
}
