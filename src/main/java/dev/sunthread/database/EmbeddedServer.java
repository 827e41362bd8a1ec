package dev.sunthread.database;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Path;
import java.time.Duration;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;

/**
 * A PostgreSQL server on a directory of its own, from start to close. It listens on the loopback address only, asks for
 * a password, and answers a commit only once it is on disk; a second server on the same directory is refused, and one
 * left over from a killed application is stopped first.
 */
final class EmbeddedServer implements JdbcConnectionDetails, AutoCloseable {

    private static final String WORKING_DIRECTORY = "ot.epg.working-dir";
    private static final Duration LONGEST_RECOVERY = Duration.ofMinutes(2);

    private final DatabaseDirectory directory;
    private final DirectoryLock lock;
    private final String password;
    private final EmbeddedPostgres server;

    private EmbeddedServer(DatabaseDirectory directory, DirectoryLock lock) throws IOException {
        this.directory = directory;
        this.lock = lock;
        new LeftoverServer(directory.cluster()).stop();
        if (!directory.holdsCluster()) {
            directory.beginCluster();
        }
        this.password = ServerPassword.of(directory);
        this.server = startServer(directory, password);
        directory.finishCluster();
    }

    static EmbeddedServer start(Path home) throws IOException {
        DatabaseDirectory directory = DatabaseDirectory.prepare(home);
        DirectoryLock lock = DirectoryLock.take(directory);
        try {
            return new EmbeddedServer(directory, lock);
        } catch (IOException | RuntimeException e) {
            lock.close();
            throw e;
        }
    }

    private static EmbeddedPostgres startServer(DatabaseDirectory directory, String password) throws IOException {
        try {
            return settings(directory, password).start();
        } catch (IOException | IllegalStateException e) {
            throw new IOException("The embedded database does not start; its log is " + directory.log(), e);
        }
    }

    private static EmbeddedPostgres.Builder settings(DatabaseDirectory directory, String password) {
        return initialSettings(builderInside(directory), directory)
                .setDataDirectory(directory.cluster())
                .setCleanDataDirectory(false)
                .setOverrideWorkingDirectory(directory.programs().toFile())
                // the context stops the server after the connection pool; a hook would race with both
                .setRegisterShutdownHook(false)
                .setOutputRedirector(Redirect.appendTo(directory.log().toFile()))
                .setPGStartupWait(LONGEST_RECOVERY)
                .setConnectConfig("password", password)
                .setServerConfig("listen_addresses", "127.0.0.1")
                .setServerConfig("unix_socket_directories", "")
                // the library is made for tests and turns durability off
                .setServerConfig("fsync", "on")
                .setServerConfig("synchronous_commit", "on")
                .setServerConfig("full_page_writes", "on")
                // what a plant of a year reads again and again stays in memory
                .setServerConfig("shared_buffers", "256MB");
    }

    // left alone, the library tidies a directory under the temporary one, where every user of the machine can plant
    // links
    private static EmbeddedPostgres.Builder builderInside(DatabaseDirectory directory) {
        String before = System.getProperty(WORKING_DIRECTORY);
        System.setProperty(WORKING_DIRECTORY, directory.programs().toString());
        try {
            return EmbeddedPostgres.builder();
        } finally {
            if (before == null) {
                System.clearProperty(WORKING_DIRECTORY);
            } else {
                System.setProperty(WORKING_DIRECTORY, before);
            }
        }
    }

    // the library hands every locale entry to initdb as a long option, which is the only way to its other options
    private static EmbeddedPostgres.Builder initialSettings(
            EmbeddedPostgres.Builder builder, DatabaseDirectory directory) {
        return builder.setLocaleConfig("auth", "scram-sha-256")
                .setLocaleConfig("pwfile", directory.password().toString())
                .setLocaleConfig("locale", "C")
                .setLocaleConfig("locale-provider", "builtin")
                .setLocaleConfig("builtin-locale", "C.UTF-8");
    }

    @Override
    public String getJdbcUrl() {
        return "jdbc:postgresql://127.0.0.1:" + server.getPort() + "/postgres";
    }

    @Override
    public String getUsername() {
        return "postgres";
    }

    @Override
    public String getPassword() {
        return password;
    }

    @Override
    public void close() throws IOException {
        try {
            server.close();
            // the library waits a few seconds only, less than a last checkpoint may take
            new LeftoverServer(directory.cluster()).stop();
        } finally {
            lock.close();
        }
    }
}
