package dev.sunthread.testing;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.postgresql.ds.PGSimpleDataSource;
import org.testcontainers.DockerClientFactory;
import org.testcontainers.postgresql.PostgreSQLContainer;

/** The one PostgreSQL server of this test run; started on first use, gone when the run ends, and not crash-safe. */
record TestServer(
        ServerChoice choice,
        String url,
        @Nullable String user,
        @Nullable String password) {

    static TestServer running() {
        return Running.SERVER;
    }

    private static final class Running {
        static final TestServer SERVER = start();
    }

    private static TestServer start() {
        ServerChoice choice = ServerChoice.of(
                setting("url"), () -> DockerClientFactory.instance().isDockerAvailable());
        TestServer server =
                switch (choice) {
                    case GIVEN -> given();
                    case CONTAINER -> container();
                    case EMBEDDED -> embedded();
                };
        System.out.println("Tests run on PostgreSQL " + server.version() + " ("
                + choice.name().toLowerCase(Locale.ROOT) + ")");
        return server;
    }

    private static TestServer given() {
        return new TestServer(
                ServerChoice.GIVEN, String.valueOf(setting("url")), setting("username"), setting("password"));
    }

    private static TestServer container() {
        var postgres = new PostgreSQLContainer("postgres:15")
                .withEnv("POSTGRES_INITDB_ARGS", "--locale=C.UTF-8")
                .withCommand("postgres", "-c", "fsync=off", "-c", "full_page_writes=off", "-c", "max_connections=300");
        postgres.start();
        return new TestServer(
                ServerChoice.CONTAINER, postgres.getJdbcUrl(), postgres.getUsername(), postgres.getPassword());
    }

    private static TestServer embedded() {
        // beside its programs, where the library later clears away what a killed run left behind
        Path data = Path.of(
                System.getProperty("java.io.tmpdir"),
                "embedded-pg",
                UUID.randomUUID().toString());
        try {
            var postgres = EmbeddedPostgres.builder()
                    .setDataDirectory(data)
                    .setLocaleConfig("locale", "C")
                    .setLocaleConfig("locale-provider", "builtin")
                    .setLocaleConfig("builtin-locale", "C.UTF-8")
                    .setServerConfig("listen_addresses", "127.0.0.1")
                    .setServerConfig("unix_socket_directories", "")
                    .setServerConfig("full_page_writes", "off")
                    .start();
            return new TestServer(ServerChoice.EMBEDDED, postgres.getJdbcUrl("postgres", "postgres"), "postgres", null);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static @Nullable String setting(String name) {
        String property = System.getProperty("spring.datasource." + name);
        return property != null ? property : System.getenv("SPRING_DATASOURCE_" + name.toUpperCase(Locale.ROOT));
    }

    PGSimpleDataSource database() {
        var source = new PGSimpleDataSource();
        source.setUrl(url);
        if (user != null) {
            source.setUser(user);
        }
        if (password != null) {
            source.setPassword(password);
        }
        return source;
    }

    PGSimpleDataSource database(String name) {
        var source = database();
        source.setDatabaseName(name);
        return source;
    }

    void execute(String sql) throws SQLException {
        try (var connection = database().getConnection();
                var statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    private String version() {
        try (var connection = database().getConnection()) {
            return connection.getMetaData().getDatabaseProductVersion().split(" ")[0];
        } catch (SQLException e) {
            throw new IllegalStateException("The test server does not answer at " + url, e);
        }
    }
}
