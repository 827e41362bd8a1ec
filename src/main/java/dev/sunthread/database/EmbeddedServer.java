package dev.sunthread.database;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;

/**
 * A PostgreSQL server on a directory of its own, from start to close. It listens on the loopback address only, asks for
 * a password, and answers a commit only once it is on disk; a second server on the same directory is refused, and one
 * left over from a killed application is stopped first. One that ends by itself is started anew on the same port.
 */
final class EmbeddedServer implements JdbcConnectionDetails, AutoCloseable {

    private static final String WORKING_DIRECTORY = "ot.epg.working-dir";
    private static final String LIBRARY_LOCK = "epg-lock";
    private static final Duration LONGEST_RECOVERY = Duration.ofMinutes(2);
    private static final Duration PAUSE = Duration.ofSeconds(1);
    private static final Logger LOG = LoggerFactory.getLogger(EmbeddedServer.class);

    private final DatabaseDirectory directory;
    private final DirectoryLock lock;
    private final String password;
    private volatile EmbeddedPostgres server;
    private volatile boolean closed;

    private EmbeddedServer(DatabaseDirectory directory, DirectoryLock lock) throws IOException {
        this.directory = directory;
        this.lock = lock;
        new ServerProcess(directory.cluster()).stop();
        if (!directory.holdsCluster()) {
            directory.beginCluster();
        }
        this.password = ServerPassword.of(directory);
        this.server = firstServer(directory, password);
        directory.finishCluster();
        watch();
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

    private static EmbeddedPostgres firstServer(DatabaseDirectory directory, String password) throws IOException {
        try {
            return launch(directory, settings(directory, password));
        } catch (IOException | IllegalStateException e) {
            throw new IOException("The embedded database does not start; its log is " + directory.log(), e);
        }
    }

    private void watch() {
        Thread watching = new Thread(this::keepRunning, "watches the database server");
        watching.setDaemon(true);
        watching.start();
    }

    // the process is no child of this one, so that nothing but its id tells of its end
    private void keepRunning() {
        while (!closed) {
            pause();
            try {
                startAnewIfGone();
            } catch (IOException | IllegalStateException e) {
                LOG.error("The database server does not start; it is tried again. Its log is {}", directory.log(), e);
            }
        }
    }

    private synchronized void startAnewIfGone() throws IOException {
        ServerProcess process = new ServerProcess(directory.cluster());
        if (!closed && !process.isRunning()) {
            LOG.error("The database server ended by itself and is started anew; its log is {}", directory.log());
            server.close();
            process.stop();
            server = launch(directory, settings(directory, password).setPort(server.getPort()));
            LOG.info("The database server is there again");
        }
    }

    // the library never gives back the lock of a start that failed; this one's own stands before it
    private static EmbeddedPostgres launch(DatabaseDirectory directory, EmbeddedPostgres.Builder settings)
            throws IOException {
        Files.deleteIfExists(directory.cluster().resolve(LIBRARY_LOCK));
        return settings.start();
    }

    private static void pause() {
        try {
            Thread.sleep(PAUSE.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
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
        closed = true;
        stop();
    }

    private synchronized void stop() throws IOException {
        try {
            server.close();
            // the library waits a few seconds only, less than a last checkpoint may take
            new ServerProcess(directory.cluster()).stop();
        } finally {
            lock.close();
        }
    }
}
