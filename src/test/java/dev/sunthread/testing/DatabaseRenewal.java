package dev.sunthread.testing;

import com.zaxxer.hikari.HikariDataSource;
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
            ((HikariDataSource) context.getBean(DataSource.class))
                    .getHikariPoolMXBean()
                    .softEvictConnections();
            database.renew();
        }
        database.use();
    }
}
