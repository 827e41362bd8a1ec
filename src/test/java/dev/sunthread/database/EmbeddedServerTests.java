package dev.sunthread.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EmbeddedServerTests {

    @TempDir
    static Path parent;

    static Path home;
    static EmbeddedServer server;

    @BeforeAll
    static void start() throws IOException {
        home = parent.resolve("data/postgres");
        server = EmbeddedServer.start(home);
    }

    @AfterAll
    static void stop() throws IOException {
        server.close();
        assertThat(home.resolve("cluster/postmaster.pid")).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(strings = {"fsync", "synchronous_commit", "full_page_writes"})
    void keepsEveryCommitOnDisk(String setting) throws SQLException {
        assertThat(Answer.of(server, "SHOW " + setting)).isEqualTo("on");
    }

    @Test
    void listensOnTheLoopbackAddressOnly() throws SQLException {
        assertThat(Answer.of(server, "SHOW listen_addresses")).isEqualTo("127.0.0.1");
        assertThat(Answer.of(server, "SHOW unix_socket_directories")).isEmpty();
    }

    @Test
    void isOutOfReachOnTheAddressesOtherMachinesUse() throws IOException {
        Optional<InetAddress> outside = NetworkInterface.networkInterfaces()
                .flatMap(NetworkInterface::inetAddresses)
                .filter(address -> !address.isLoopbackAddress() && !address.isLinkLocalAddress())
                .findFirst();
        assumeTrue(outside.isPresent());
        int port = URI.create(server.getJdbcUrl().substring("jdbc:".length())).getPort();

        assertThatExceptionOfType(IOException.class).isThrownBy(() -> new Socket(outside.get(), port));
    }

    @ParameterizedTest
    @ValueSource(strings = {"wrong", " "})
    void refusesAWrongPassword(String password) {
        assertThatExceptionOfType(SQLException.class)
                .isThrownBy(() -> DriverManager.getConnection(server.getJdbcUrl(), server.getUsername(), password))
                .satisfies(refusal -> assertThat(refusal.getSQLState()).isEqualTo("28P01"));
    }

    @Test
    void storesThePasswordAsAScramSecret() throws SQLException {
        assertThat(Answer.of(server, "SELECT rolpassword FROM pg_authid WHERE rolname = 'postgres'"))
                .startsWith("SCRAM-SHA-256$");
        assertThat(Answer.of(server, "SELECT count(*) FROM pg_hba_file_rules WHERE auth_method <> 'scram-sha-256'"))
                .isEqualTo("0");
    }

    @Test
    void keepsDirectoryAndPasswordToTheirOwner() throws IOException {
        assumeTrue(home.getFileSystem().supportedFileAttributeViews().contains("posix"));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(home)))
                .isEqualTo("rwx------");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(home.resolve("password"))))
                .isEqualTo("rw-------");
    }

    @Test
    void ordersTextByCodePointOnEveryMachine() throws SQLException {
        assertThat(Answer.of(server, "SELECT string_agg(t, '' ORDER BY t) FROM unnest(ARRAY['a', 'B', 'ä', 'A']) t"))
                .isEqualTo("ABaä");
    }
}
