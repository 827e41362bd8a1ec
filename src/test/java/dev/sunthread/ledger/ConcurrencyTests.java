package dev.sunthread.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.kernel.Refused;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Together;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What the ledger promises while several write and seal at once. */
@SunthreadTest
class ConcurrencyTests {

    @Autowired
    Door door;

    @Autowired
    Sealer sealer;

    @Autowired
    JdbcClient jdbc;

    @BeforeEach
    void released() {
        Plant.released(door);
    }

    @Test
    void oneIdSentTwiceAtOnceIsRecordedOnceAndKnownToTheOther() throws Exception {
        for (int i = 0; i < 10; i++) {
            Envelope birth = Said.birth("R" + i);
            List<Boolean> isNew = Together.atOnce(List.of(
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
            work.add(repeated(20, i -> door.accept(Said.birth(mark + i), Manner.TOLD)));
            work.add(repeated(20, i -> sealer.seal()));
        }
        Together.atOnce(work);
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
        Together.atOnce(List.of(
                repeated(units, i -> door.accept(Said.birth("R" + i), Manner.TOLD)),
                repeated(units, i -> doOnceItIsAllowed(Said.step("R" + i))),
                repeated(units, i -> doOnceItIsAllowed(Said.installation("R" + i, "W" + i))),
                repeated(units, i -> door.accept(Said.birth("WALL", "W" + i), Manner.TOLD)),
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
        door.accept(Said.birth("WALL", "W1", "W2"), Manner.TOLD);
        for (int i = 0; i < 10; i++) {
            String unit = "R" + i;
            door.accept(Said.birth(unit), Manner.TOLD);
            Callable<Boolean> one = () -> isDone(Said.installation(unit, "W1"));
            Callable<Boolean> other = () -> isDone(Said.installation(unit, "W2"));
            assertThat(Together.atOnce(List.of(one, other))).containsExactlyInAnyOrder(true, false);
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

    private long count(String table) {
        return jdbc.sql("SELECT count(*) FROM " + table).query(Long.class).single();
    }
}
