package dev.sunthread.testing;

import com.zaxxer.hikari.HikariDataSource;
import javax.sql.DataSource;
import org.springframework.context.ApplicationContext;
import org.springframework.test.context.TestContext;
import org.springframework.test.context.TestExecutionListener;

/** Renews the database of a cached context before the next class that uses it; a nested class belongs to its outer one. */
class DatabaseRenewal implements TestExecutionListener {

    @Override
    public void beforeTestClass(TestContext test) {
        if (test.getTestClass().isMemberClass() || !test.hasApplicationContext()) {
            return;
        }
        ApplicationContext context = test.getApplicationContext();
        ((HikariDataSource) context.getBean(DataSource.class))
                .getHikariPoolMXBean()
                .softEvictConnections();
        context.getBean(TestDatabase.class).renew();
    }
}
