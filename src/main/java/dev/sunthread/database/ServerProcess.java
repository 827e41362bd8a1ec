package dev.sunthread.database;

import io.zonky.test.db.postgres.util.LinuxUtils;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The server at work on a cluster. One that a killed application left running is stopped, never adopted, so that the next
 * server always has this version's settings. What a killed server began itself may still write for a moment: its end is
 * waited for, and only then the process id is cleared away that would keep the next server off.
 */
record ServerProcess(Path cluster) {

    private static final Duration LONGEST_STOP = Duration.ofMinutes(2);
    private static final Path SHARED_MEMORY = Path.of("/proc/sysvipc/shm");
    private static final Duration PAUSE = Duration.ofMillis(50);

    void stop() throws IOException {
        Optional<Path> program = running();
        if (program.isPresent()) {
            end(program.get());
        }
        awaitEnd(this::isSharingMemory);
        Files.deleteIfExists(pidFile());
    }

    boolean isRunning() throws IOException {
        return running().isPresent();
    }

    private void end(Path program) throws IOException {
        try {
            ask(program);
        } catch (InterruptedException e) {
            throw interrupted(e);
        }
        awaitEnd(this::isRunning);
    }

    private IOException interrupted(InterruptedException e) {
        Thread.currentThread().interrupt();
        return new IOException("Interrupted while a server left running on " + cluster + " stops", e);
    }

    private Optional<Path> running() throws IOException {
        return recordedId()
                .flatMap(ProcessHandle::of)
                .map(ProcessHandle::info)
                .filter(this::servesThisCluster)
                .flatMap(ProcessHandle.Info::command)
                .map(Path::of);
    }

    private Optional<Long> recordedId() throws IOException {
        try {
            return Files.readAllLines(pidFile()).stream()
                    .findFirst()
                    .map(String::strip)
                    .filter(pid -> pid.matches("\\d+"))
                    .map(Long::parseLong);
        } catch (NoSuchFileException neverStartedOrStopped) {
            return Optional.empty();
        }
    }

    private Path pidFile() {
        return cluster.resolve("postmaster.pid");
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

    private void ask(Path program) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        // like the server itself, its control program refuses to run as root
        if (LinuxUtils.isUnshareAvailable()) {
            command.addAll(List.of("unshare", "-U"));
        }
        String control = program.getFileName().toString().replace("postgres", "pg_ctl");
        command.add(program.resolveSibling(control).toString());
        command.addAll(List.of("stop", "-D", cluster.toString(), "-m", "fast", "--no-wait"));
        new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
    }

    // the control program would wait as well, but without end for a server that dies before its parent takes note
    private void awaitEnd(AtWork atWork) throws IOException {
        long deadline = System.nanoTime() + LONGEST_STOP.toNanos();
        while (atWork.yet()) {
            if (System.nanoTime() > deadline) {
                throw new DirectoryRefused(
                        "A server left running on " + cluster + " does not stop.", "End it and start Sunthread again.");
            }
            try {
                Thread.sleep(PAUSE.toMillis());
            } catch (InterruptedException e) {
                throw interrupted(e);
            }
        }
    }

    private interface AtWork {
        boolean yet() throws IOException;
    }

    // the seventh line names the memory that all processes of one server share; Linux lists how many hold it
    private boolean isSharingMemory() throws IOException {
        if (!Files.exists(pidFile()) || !Files.exists(SHARED_MEMORY)) {
            return false;
        }
        List<String> lines = Files.readAllLines(pidFile());
        List<String> memory = lines.size() < 7 ? List.of() : words(lines.get(6));
        return Files.readAllLines(SHARED_MEMORY).stream()
                .map(ServerProcess::words)
                .anyMatch(segment -> segment.size() > 6
                        && segment.subList(0, 2).equals(memory)
                        && !segment.get(6).equals("0"));
    }

    private static List<String> words(String line) {
        return List.of(line.strip().split("\\s+"));
    }
}
