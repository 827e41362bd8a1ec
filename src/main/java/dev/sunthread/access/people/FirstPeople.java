package dev.sunthread.access.people;

import dev.sunthread.access.Role;
import java.util.Set;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** Makes the first persons where there is nobody yet, by one instance however many start at once. */
@Component
class FirstPeople {

    /** Any number, the same in every instance. */
    private static final long LOCK = 7_305_114_885L;

    private final PersonRows rows;
    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;

    FirstPeople(PersonRows rows, JdbcClient jdbc, PlatformTransactionManager transactions) {
        this.rows = rows;
        this.jdbc = jdbc;
        this.transaction = new TransactionTemplate(transactions);
    }

    /** Lets persons be made if there is nobody. */
    void make(Runnable persons) {
        transaction.executeWithoutResult(status -> {
            jdbc.sql("SELECT pg_advisory_xact_lock(?)").param(LOCK).query().listOfRows();
            if (rows.none()) {
                persons.run();
            }
        });
    }

    static PersonWords said(String mark, String name, String signIn, Role role) {
        return new PersonWords(mark, name, signIn, Set.of(role));
    }
}
