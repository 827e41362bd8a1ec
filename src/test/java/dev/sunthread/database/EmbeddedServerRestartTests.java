package dev.sunthread.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EmbeddedServerRestartTests {

    private static final String CLUSTER_ID = "SELECT system_identifier FROM pg_control_system()";
    private static final String NO_ROW = "SELECT 1";

    // one cluster for all tests that end with it in order: making one takes seconds
    @TempDir
    static Path home;

    @TempDir
    Path other;

    @Test
    void keepsClusterRowsAndPasswordOverARestart() throws Exception {
        String cluster;
        String password;
        try (var server = EmbeddedServer.start(home)) {
            Answer.of(server, row("restarted"));
            cluster = Answer.of(server, CLUSTER_ID);
            password = server.getPassword();
        }
        try (var server = EmbeddedServer.start(home)) {
            assertThat(Answer.of(server, "SELECT number FROM restarted")).isEqualTo("L-1");
            assertThat(Answer.of(server, CLUSTER_ID)).isEqualTo(cluster);
            assertThat(server.getPassword()).isEqualTo(password);
        }
    }

    @Test
    void stopsTheServerOfAKilledApplicationAndKeepsItsRows() throws Exception {
        ProcessHandle leftover = leftoverOfAKilledApplication("killed");

        try (var server = EmbeddedServer.start(home)) {
            assertThat(Answer.of(server, "SELECT number FROM killed")).isEqualTo("L-1");
            assertThat(serverProcess()).isNotEqualTo(leftover);
        }
    }

    @Test
    void recoversWhenApplicationAndServerAreKilled() throws Exception {
        leftoverOfAKilledApplication("crashed").destroyForcibly();

        try (var server = EmbeddedServer.start(home)) {
            assertThat(Answer.of(server, "SELECT number FROM crashed")).isEqualTo("L-1");
        }
    }

    @Test
    void startsAnewByItselfWhenItsServerIsKilled() throws Exception {
        try (var server = EmbeddedServer.start(home)) {
            Answer.of(server, row("survivor"));
            String url = server.getJdbcUrl();
            ProcessHandle killed = serverProcess();
            killed.destroyForcibly();
            killed.onExit().get();

            assertThat(answerOnceItIsBack(server, "SELECT number FROM survivor"))
                    .isEqualTo("L-1");
            assertThat(server.getJdbcUrl()).isEqualTo(url);
            assertThat(serverProcess()).isNotEqualTo(killed);
        }
        assertThat(home.resolve("cluster/postmaster.pid")).doesNotExist();
    }

    private static String answerOnceItIsBack(EmbeddedServer server, String question) throws Exception {
        long deadline = System.nanoTime() + Duration.ofMinutes(1).toNanos();
        while (true) {
            try {
                return Answer.of(server, question);
            } catch (SQLException e) {
                if (System.nanoTime() > deadline) {
                    throw e;
                }
                Thread.sleep(100);
            }
        }
    }

    @Test
    void leavesAloneAProgramThatGotTheProcessIdOfADeadServer() throws Exception {
        EmbeddedServer.start(home).close();
        Path pidFile = home.resolve("cluster/postmaster.pid");
        Files.writeString(pidFile, ProcessHandle.current().pid() + "\n");

        try (var server = EmbeddedServer.start(home)) {
            assertThat(Answer.of(server, "SELECT 1")).isEqualTo("1");
        }
    }

    @Test
    void refusesADirectoryThatAnotherApplicationUses() throws Exception {
        try (var first = OtherApplication.start(home, NO_ROW)) {
            assertThat(first.says()).isEqualTo("application started");

            assertThatExceptionOfType(DirectoryRefused.class)
                    .isThrownBy(() -> EmbeddedServer.start(home))
                    .withMessageContaining("Another Sunthread is running on the database directory " + home)
                    .withMessageContaining("sunthread.database.directory");
        }
        stopLeftover();
    }

    @Test
    void tellsASecondApplicationThatTheDirectoryIsInUse() throws Exception {
        try (var server = EmbeddedServer.start(home);
                var second = OtherApplication.start(home, NO_ROW)) {
            assertThat(second.says()).startsWith("application refused: Another Sunthread is running");
            assertThat(Answer.of(server, "SELECT 1")).isEqualTo("1");
        }
    }

    @Test
    void startsOverAfterAFirstStartThatNeverEnded() throws Exception {
        Files.createDirectories(other.resolve("cluster"));
        Files.createFile(other.resolve("unfinished"));
        Files.writeString(other.resolve("cluster/postgresql.conf"), "half written");

        try (var server = EmbeddedServer.start(other)) {
            assertThat(Answer.of(server, "SELECT 1")).isEqualTo("1");
        }
    }

    @Test
    void refusesAClusterWhosePasswordFileIsLost() throws Exception {
        EmbeddedServer.start(home).close();
        Path saved = Files.move(home.resolve("password"), other.resolve("password"));

        assertThatExceptionOfType(DirectoryRefused.class)
                .isThrownBy(() -> EmbeddedServer.start(home))
                .withMessageContaining("lost its password file");
        Files.move(saved, home.resolve("password"));
    }

    private static String row(String table) {
        return "CREATE TABLE " + table + " AS SELECT 'L-1' AS number";
    }

    private ProcessHandle leftoverOfAKilledApplication(String table) throws IOException, SQLException {
        try (var application = OtherApplication.start(home, row(table))) {
            assertThat(application.says()).isEqualTo("application started");
        }
        assertThat(serverProcess().isAlive()).isTrue();
        return serverProcess();
    }

    private ProcessHandle serverProcess() throws IOException {
        String pid = Files.readAllLines(home.resolve("cluster/postmaster.pid")).get(0);
        return ProcessHandle.of(Long.parseLong(pid)).orElseThrow();
    }

    private void stopLeftover() throws IOException {
        new ServerProcess(home.resolve("cluster")).stop();
    }
}
