package dev.sunthread.testing;

import org.springframework.boot.test.util.TestPropertyValues;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;

/** Points an application context at a database of its own. */
class ContextDatabase implements ApplicationContextInitializer<ConfigurableApplicationContext> {

    @Override
    public void initialize(ConfigurableApplicationContext context) {
        var database = TestDatabase.create();
        var source = database.source();
        context.getBeanFactory().registerSingleton("testDatabase", database);
        TestPropertyValues.of("spring.datasource.url=" + source.getUrl())
                .and("spring.datasource.username=" + source.getUser())
                .and("spring.datasource.password=" + (source.getPassword() == null ? "" : source.getPassword()))
                // a pool that fills itself would reconnect while the database is being renewed
                .and("spring.datasource.hikari.minimum-idle=0")
                // tests seal when they ask; a timer would hold connections to a database that is being renewed
                .and("sunthread.ledger.seal-every=1h")
                // tests tell of a March that may lie ahead of the machine's clock
                .and("sunthread.ledger.ahead=3650d")
                // a page of a test has its answer, however slow the machine
                .and("sunthread.traces.page-wait=${tests.page-wait:2m}")
                .and("spring.session.jdbc.cleanup-cron=-")
                // nobody is there but whom a test makes, and hashing secrets takes no time
                .and("sunthread.access.first-administrator=false")
                .and("sunthread.access.hash.memory=64")
                .and("sunthread.access.hash.passes=1")
                .applyTo(context);
    }
}
