package dev.sunthread.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.kernel.Refused;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** What the ledger promises while several write and seal at once. */
@SunthreadTest
class ConcurrencyTests {

    @Autowired
    Door door;

    @Autowired
    Sealer sealer;

    @Autowired
    JdbcClient jdbc;

    private final ExecutorService threads = Executors.newCachedThreadPool();

    @BeforeEach
    void released() {
        Plant.released(door);
    }

    @AfterEach
    void stopped() {
        threads.shutdownNow();
    }

    @Test
    void oneIdSentTwiceAtOnceIsRecordedOnceAndKnownToTheOther() throws Exception {
        for (int i = 0; i < 10; i++) {
            Envelope birth = birth("R" + i);
            List<Boolean> isNew = atOnce(List.of(
                    () -> door.accept(birth, Manner.TOLD).isNew(),
                    () -> door.accept(birth, Manner.TOLD).isNew(),
                    () -> door.accept(birth, Manner.TOLD).isNew()));
            assertThat(isNew).containsExactlyInAnyOrder(true, false, false);
        }
        assertThat(count("production.birth")).isEqualTo(10);
    }

    @Test
    void severalSealersGiveConsecutivePositionsAndEachOne() throws Exception {
        List<Callable<Boolean>> work = new ArrayList<>();
        for (int writer = 0; writer < 3; writer++) {
            String mark = "W" + writer + "-";
            work.add(repeated(20, i -> door.accept(birth(mark + i), Manner.TOLD)));
            work.add(repeated(20, i -> sealer.seal()));
        }
        atOnce(work);
        long last = sealer.seal();
        assertThat(last).isEqualTo(count("ledger.entry"));
        assertThat(jdbc.sql("SELECT position FROM ledger.position ORDER BY position")
                        .query(Long.class)
                        .list())
                .isEqualTo(IntStream.rangeClosed(1, (int) last)
                        .mapToObj(i -> (long) i)
                        .toList());
        assertThat(count("ledger.unsealed")).isZero();
    }

    @Test
    void nothingIsSealedBeforeWhatItDependsOn() throws Exception {
        int units = 20;
        atOnce(List.of(
                repeated(units, i -> door.accept(birth("R" + i), Manner.TOLD)),
                repeated(units, i -> doOnceItIsAllowed(step("R" + i))),
                repeated(units, i -> doOnceItIsAllowed(installation("R" + i, "W" + i))),
                repeated(units, i -> door.accept(birth("WALL", "W" + i), Manner.TOLD)),
                repeated(units, i -> sealer.seal())));
        sealer.seal();
        assertThat(jdbc.sql("""
                        SELECT count(*) FROM production.birth b JOIN ledger.position bp ON bp.entry = b.entry
                        JOIN (SELECT entry, unit FROM production.step_unit
                              UNION SELECT entry, child_unit FROM production.installation
                              UNION SELECT i.entry, p.parent FROM production.installation i
                                JOIN production.parent_position p ON p.id = i.parent_position) d ON d.unit = b.unit
                        JOIN ledger.position dp ON dp.entry = d.entry
                        WHERE dp.position > bp.position
                        """).query(Integer.class).single()).isEqualTo(3 * units);
    }

    @Test
    void oneOfTwoInstallationsOfAUnitAskedAtOnceIsRefused() throws Exception {
        door.accept(birth("WALL", "W1", "W2"), Manner.TOLD);
        for (int i = 0; i < 10; i++) {
            String unit = "R" + i;
            door.accept(birth(unit), Manner.TOLD);
            Callable<Boolean> one = () -> isDone(installation(unit, "W1"));
            Callable<Boolean> other = () -> isDone(installation(unit, "W2"));
            assertThat(atOnce(List.of(one, other))).containsExactlyInAnyOrder(true, false);
        }
        assertThat(count("production.installation")).isEqualTo(10);
    }

    private Object doOnceItIsAllowed(Envelope envelope) {
        while (!isDone(envelope)) {
            Thread.yield();
        }
        return envelope;
    }

    private boolean isDone(Envelope envelope) {
        try {
            return door.accept(envelope, Manner.DO).isNew();
        } catch (Refused e) {
            return false;
        }
    }

    private static Callable<Boolean> repeated(int times, IntFunction<Object> work) {
        return () -> IntStream.range(0, times).allMatch(i -> work.apply(i) != null);
    }

    /** Does all of it in threads that begin together. */
    private <T> List<T> atOnce(List<Callable<T>> work) throws Exception {
        CyclicBarrier begin = new CyclicBarrier(work.size());
        List<Future<T>> running = new ArrayList<>();
        for (Callable<T> part : work) {
            running.add(threads.submit(() -> {
                begin.await();
                return part.call();
            }));
        }
        List<T> results = new ArrayList<>();
        for (Future<T> part : running) {
            results.add(part.get());
        }
        return results;
    }

    private static Envelope birth(String serial) {
        return birth("RCV", serial);
    }

    private static Envelope birth(String item, String... serials) {
        List<Map<String, String>> units = new ArrayList<>();
        for (String serial : serials) {
            units.add(Map.of("item", item, "serial", serial));
        }
        return envelope("birth-" + item + serials[0], "birth", Map.of("units", units));
    }

    private static Envelope step(String serial) {
        var unit = Map.of("item", "RCV", "serial", serial);
        return envelope(
                "step-" + serial, "step", Map.of("operation", "look", "station", "BOND", "units", List.of(unit)));
    }

    private static Envelope installation(String serial, String wall) {
        return envelope(
                "put-" + serial + wall,
                "installation",
                Map.of(
                        "child", Map.of("unit", Map.of("item", "RCV", "serial", serial)),
                        "parent", Map.of("item", "WALL", "serial", wall),
                        "position", serial));
    }

    private static Envelope envelope(String id, String kind, Map<String, Object> body) {
        return Envelope.of(new EnvelopeHead(id, kind, 1, Plant.at("08:00"), "op-1", "test"), (ObjectNode)
                JsonMapper.shared().valueToTree(body));
    }

    private long count(String table) {
        return jdbc.sql("SELECT count(*) FROM " + table).query(Long.class).single();
    }
}
