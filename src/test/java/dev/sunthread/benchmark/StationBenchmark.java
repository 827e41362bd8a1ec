package dev.sunthread.benchmark;

import dev.sunthread.access.Right;
import dev.sunthread.access.machine.TokenWords;
import dev.sunthread.access.machine.Tokens;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.SunthreadTest;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;

/**
 * Stations scanning over the loopback address: how many scans are accepted in a second, and how long the word takes, at
 * 1, 8 and 50 open connections. {@code -Dsunthread.seconds=60} is how long each goes on.
 */
@Tag("benchmark")
@SunthreadTest(webEnvironment = WebEnvironment.RANDOM_PORT)
class StationBenchmark {

    private static final int SECONDS = Integer.getInteger("sunthread.seconds", 60);
    private static final int STATIONS = 50;

    @LocalServerPort
    int port;

    @Autowired
    Door door;

    @Autowired
    Tokens tokens;

    @TempDir
    Path directory;

    private final AtomicInteger serial = new AtomicInteger();
    private final List<String> secrets = new ArrayList<>();

    @Test
    void tellsTimes() throws Exception {
        StationFloor.released(door, STATIONS);
        for (int i = 1; i <= STATIONS; i++) {
            secrets.add(tokens.make(new TokenWords("bench-" + i, "benchmark", "B" + i, Set.of(Right.WORK), null)));
        }
        for (int connections : List.of(1, 8, STATIONS)) {
            System.out.printf("disk flush: %.2f ms%n", flush());
            run(connections);
        }
    }

    /** The median time of a write of 4 KiB that is forced to the disk, in milliseconds. */
    private double flush() throws IOException {
        List<Long> times = new ArrayList<>();
        try (FileChannel file =
                FileChannel.open(directory.resolve("flush"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            for (int i = 0; i < 50; i++) {
                long start = System.nanoTime();
                file.write(ByteBuffer.allocate(4096), 0);
                file.force(true);
                times.add(System.nanoTime() - start);
            }
        }
        Files.delete(directory.resolve("flush"));
        return times.stream().sorted().skip(25).findFirst().orElseThrow() / 1e6;
    }

    private void run(int connections) throws Exception {
        ExecutorService people = Executors.newFixedThreadPool(connections);
        long end = System.nanoTime() + SECONDS * 1_000_000_000L;
        List<Callable<List<Long>>> all = new ArrayList<>();
        for (int i = 0; i < connections; i++) {
            String secret = secrets.get(i);
            all.add(() -> scanUntil(end, secret));
        }
        List<Long> times = new ArrayList<>();
        for (Future<List<Long>> one : people.invokeAll(all)) {
            times.addAll(one.get());
        }
        people.shutdown();
        times.sort(null);
        System.out.printf(
                "%d connections: %.1f scans accepted a second, p50 %.1f ms, p99 %.1f ms%n",
                connections,
                times.size() / (double) SECONDS,
                times.get(times.size() / 2) / 1e6,
                times.get(times.size() * 99 / 100) / 1e6);
    }

    private List<Long> scanUntil(long end, String secret) throws IOException, InterruptedException {
        HttpClient client = HttpClient.newHttpClient();
        List<Long> times = new ArrayList<>();
        while (System.nanoTime() < end) {
            for (String text : List.of("R%07d".formatted(serial.incrementAndGet()), "C-1")) {
                long start = System.nanoTime();
                HttpResponse<String> answer = client.send(request(secret, text), HttpResponse.BodyHandlers.ofString());
                times.add(System.nanoTime() - start);
                if (!answer.body().contains("\"ACCEPTED\"")) {
                    throw new IllegalStateException(answer.statusCode() + " " + answer.body());
                }
            }
        }
        return times;
    }

    private HttpRequest request(String secret, String text) {
        String body =
                "[{\"id\": \"%s\", \"text\": \"%s\", \"kept\": false}]".formatted(java.util.UUID.randomUUID(), text);
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/api/v1/scans"))
                .header("Authorization", "Bearer " + secret)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build();
    }
}
