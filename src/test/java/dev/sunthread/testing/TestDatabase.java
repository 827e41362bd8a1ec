package dev.sunthread.testing;

import java.sql.SQLException;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.postgresql.ds.PGSimpleDataSource;
import org.springframework.context.ApplicationContext;

/**
 * A database of its own on the test server, with every migration applied and no rows but theirs. It is copied from a
 * template migrated once per test run, and lasts until the run ends.
 */
public final class TestDatabase {

    private static final String RUN =
            "sunthread_test_" + UUID.randomUUID().toString().substring(0, 8);
    private static final AtomicInteger COUNT = new AtomicInteger();

    // far quicker than another copy; a replica fires no trigger, so history may be deleted by the server's owner
    private static final String EMPTY = """
            SET lock_timeout = '2s';
            SET session_replication_role = replica;
            DO $$
            DECLARE
              one regclass;
              has_rows boolean;
            BEGIN
              FOR one IN SELECT c.oid FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
                WHERE c.relkind = 'r' AND n.nspname !~ '^(pg_|information_schema$|public$)'
              LOOP
                EXECUTE format('SELECT EXISTS (SELECT FROM %s)', one) INTO has_rows;
                IF has_rows THEN
                  EXECUTE format('DELETE FROM %s', one);
                END IF;
              END LOOP;
              PERFORM setval(seqrelid, seqstart, false) FROM pg_sequence;
            END $$
            """;

    private final String name;
    private boolean used;

    private TestDatabase(String name) {
        this.name = name;
    }

    /** Makes a migrated database that no other test sees; each connection taken from the source is a new one. */
    public static DataSource fresh() {
        return create().source();
    }

    /** Empties the database of a context in the middle of a test, as if another plant began on it. */
    public static void beginAgain(ApplicationContext context) {
        DatabaseRenewal.renew(context);
    }

    static TestDatabase create() {
        var database = new TestDatabase(nextName());
        database.fill();
        return database;
    }

    PGSimpleDataSource source() {
        return TestServer.running().database(name);
    }

    /** Leaves no row in this database but those of the migrations; puts a fresh copy in its place where it can't. */
    void renew() {
        try (var connection = source().getConnection();
                var statement = connection.createStatement()) {
            statement.execute(EMPTY);
        } catch (SQLException keepsItsRows) {
            execute("DROP DATABASE " + name + " WITH (FORCE)");
            fill();
        }
    }

    /** Whether a test has begun on it since it was fresh. */
    boolean isUsed() {
        return used;
    }

    void use() {
        used = true;
    }

    private void fill() {
        try {
            TestServer.running().execute("CREATE DATABASE " + name + " TEMPLATE " + Template.NAME);
        } catch (SQLException templateInUse) {
            execute("CREATE DATABASE " + name);
            migrate(name);
        }
    }

    private static final class Template {
        static final String NAME = nextName();

        static {
            execute("CREATE DATABASE " + NAME);
            migrate(NAME);
        }
    }

    private static void migrate(String name) {
        Flyway.configure()
                .dataSource(TestServer.running().database(name))
                .locations("classpath:db/migration")
                .createSchemas(false)
                .load()
                .migrate();
    }

    private static String nextName() {
        String name = RUN + "_" + COUNT.incrementAndGet();
        if (TestServer.running().choice() == ServerChoice.GIVEN) {
            Runtime.getRuntime()
                    .addShutdownHook(new Thread(() -> execute("DROP DATABASE IF EXISTS " + name + " WITH (FORCE)")));
        }
        return name;
    }

    private static void execute(String sql) {
        try {
            TestServer.running().execute(sql);
        } catch (SQLException e) {
            throw new IllegalStateException(sql, e);
        }
    }
}
