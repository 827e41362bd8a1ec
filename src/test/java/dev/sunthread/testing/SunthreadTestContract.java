package dev.sunthread.testing;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import java.util.HashSet;
import java.util.Set;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What two tests of one kind see of each other: the same application context, and not one another's rows. */
@SunthreadTest
abstract class SunthreadTestContract {

    private static final Set<ApplicationContext> CONTEXTS = new HashSet<>();

    @Autowired
    ApplicationContext context;

    @Autowired
    DataSource database;

    @Autowired
    Door door;

    @Test
    void findsTheSharedContextOnAFreshDatabase() {
        CONTEXTS.add(context);
        assertThat(CONTEXTS).hasSize(1);
        JdbcClient jdbc = JdbcClient.create(database);
        assertThat(Tables.counts(jdbc).values()).containsOnly(0L);
        Plant.released(door);
        assertThat(Tables.countsOfWhatIsTold(jdbc).values()).anyMatch(count -> count > 0);
    }

    @Test
    void findsItFreshAgainForTheNextTest() {
        findsTheSharedContextOnAFreshDatabase();
    }
}
