package dev.sunthread.testing;

import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.HikariPoolMXBean;
import dev.sunthread.database.Bulkhead;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.springframework.context.ApplicationContext;
import org.springframework.test.context.TestContext;
import org.springframework.test.context.TestExecutionListener;

/** Renews the database of a context before each test that follows another on it. */
class DatabaseRenewal implements TestExecutionListener {

    @Override
    public void beforeTestMethod(TestContext test) {
        ApplicationContext context = test.getApplicationContext();
        TestDatabase database = context.getBean(TestDatabase.class);
        if (database.isUsed()) {
            renew(context);
        }
        database.use();
    }

    static void renew(ApplicationContext context) {
        // a prepared statement would remember what was cheap on the rows of another test
        DataSource source = context.getBean(DataSource.class);
        for (Bulkhead part : Bulkhead.values()) {
            part.run(() -> evict(source));
        }
        context.getBean(TestDatabase.class).renew();
    }

    private static void evict(DataSource source) {
        try {
            HikariPoolMXBean pool = source.unwrap(HikariDataSource.class).getHikariPoolMXBean();
            if (pool != null) {
                pool.softEvictConnections();
            }
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }
}
