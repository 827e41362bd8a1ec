package dev.sunthread.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Together;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** What the timer of each instance seals, with several on one database. */
@SunthreadTest
class SealerTests {

    private static final String TAKE_LOCK = "SELECT pg_advisory_xact_lock(7305114883)";
    private static final String WAITS_FOR_LOCK = """
            SELECT count(*) FROM pg_locks WHERE locktype = 'advisory' AND NOT granted
              AND database = (SELECT oid FROM pg_database WHERE datname = current_database())
            """;

    @Autowired
    Door door;

    @Autowired
    Sealer sealer;

    @Autowired
    DataSource database;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    PlatformTransactionManager transactions;

    @BeforeEach
    void released() {
        Plant.released(door);
        sealer.seal();
    }

    @Test
    void theTimerWaitsWhileAnotherInstanceSeals() throws Exception {
        door.accept(Said.birth("R1"), Manner.TOLD);
        CompletableFuture<Void> timer;
        try (Connection other = beganSealing()) {
            timer = CompletableFuture.runAsync(sealer::sealWaiting);
            while (waiting() == 0) {
                assertThat(timer).isNotDone();
            }
            assertThat(unsealed()).isEqualTo(1);
            other.rollback();
        }
        timer.get();
        assertThat(unsealed()).isZero();
    }

    @Test
    void waitsForNobodyWhereAllIsSealed() throws SQLException {
        try (Connection other = beganSealing()) {
            assertThat(sealer.seal()).isEqualTo(sealer.last());
            other.rollback();
        }
    }

    @Test
    void holdsNoLockWhileItsCallerGoesOn() throws SQLException {
        door.accept(Said.birth("R1"), Manner.TOLD);
        new TransactionTemplate(transactions).executeWithoutResult(status -> {
            sealer.seal();
            try (Connection other = beganSealing()) {
                other.rollback();
            } catch (SQLException e) {
                throw new IllegalStateException(e);
            }
        });
    }

    @Test
    void twoInstancesSealEachEntryOnce() throws Exception {
        Sealer second = new Sealer(jdbc, transactions);
        List<Callable<Boolean>> work = new ArrayList<>();
        for (int writer = 0; writer < 2; writer++) {
            String mark = "W" + writer + "-";
            work.add(repeated(i -> door.accept(Said.birth(mark + i), Manner.TOLD)));
        }
        work.add(repeated(i -> sealer.sealWaiting()));
        work.add(repeated(i -> second.sealWaiting()));
        Together.atOnce(work);
        assertThat(sealer.seal()).isEqualTo(second.seal()).isEqualTo(entries());
        assertThat(unsealed()).isZero();
    }

    private Connection beganSealing() throws SQLException {
        Connection other = database.getConnection();
        other.setAutoCommit(false);
        try (var statement = other.createStatement()) {
            statement.execute("SET LOCAL lock_timeout = '20s'");
            statement.execute(TAKE_LOCK);
        }
        return other;
    }

    private static Callable<Boolean> repeated(java.util.function.IntConsumer work) {
        return () -> {
            for (int i = 0; i < 50; i++) {
                work.accept(i);
            }
            return true;
        };
    }

    private long waiting() {
        return jdbc.sql(WAITS_FOR_LOCK).query(Long.class).single();
    }

    private long unsealed() {
        return jdbc.sql("SELECT count(*) FROM ledger.unsealed")
                .query(Long.class)
                .single();
    }

    private long entries() {
        return jdbc.sql("SELECT count(*) FROM ledger.entry").query(Long.class).single();
    }
}
