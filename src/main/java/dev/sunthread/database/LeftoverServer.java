package dev.sunthread.database;

import io.zonky.test.db.postgres.util.LinuxUtils;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The server that a killed application leaves running on its cluster. It is stopped, never adopted, so that the next
 * server always has this version's settings; a process id left by a server that is gone is cleared away.
 */
record LeftoverServer(Path cluster) {

    private static final String STOP_SECONDS = "120";

    void stop() throws IOException {
        Path pidFile = cluster.resolve("postmaster.pid");
        if (!Files.exists(pidFile)) {
            return;
        }
        Optional<Path> program = running(pidFile);
        if (program.isPresent()) {
            stop(program.get());
        }
        Files.deleteIfExists(pidFile);
    }

    private Optional<Path> running(Path pidFile) throws IOException {
        return Files.readAllLines(pidFile).stream()
                .findFirst()
                .map(String::strip)
                .filter(pid -> pid.matches("\\d+"))
                .map(Long::parseLong)
                .flatMap(ProcessHandle::of)
                .map(ProcessHandle::info)
                .filter(this::servesThisCluster)
                .flatMap(ProcessHandle.Info::command)
                .map(Path::of);
    }

    // after a restart of the machine the recorded id may belong to any other program
    private boolean servesThisCluster(ProcessHandle.Info process) {
        boolean server = process.command()
                .map(command -> Path.of(command).getFileName().toString())
                .filter(name -> name.equals("postgres") || name.equals("postgres.exe"))
                .isPresent();
        return server
                && process.arguments()
                        .map(arguments -> Stream.of(arguments).anyMatch(cluster.toString()::equals))
                        .orElse(true);
    }

    private void stop(Path program) throws IOException {
        List<String> command = new ArrayList<>();
        // like the server itself, its control program refuses to run as root
        if (LinuxUtils.isUnshareAvailable()) {
            command.addAll(List.of("unshare", "-U"));
        }
        String control = program.getFileName().toString().replace("postgres", "pg_ctl");
        command.addAll(List.of(program.resolveSibling(control).toString(), "stop", "-D", cluster.toString()));
        command.addAll(List.of("-m", "fast", "-w", "-t", STOP_SECONDS));
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            if (process.waitFor() != 0 && Files.exists(cluster.resolve("postmaster.pid"))) {
                throw new DirectoryRefused(
                        "A server left running on " + cluster + " does not stop.", "End it and start Sunthread again.");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("Interrupted while a server left running on " + cluster + " stops", e);
        }
    }
}
