package dev.sunthread.access.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.access.AccessProperties;
import dev.sunthread.testing.TestDatabase;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The delay after failed attempts, on a clock that stands still. */
class AttemptsTests {

    private final AtomicReference<Instant> now = new AtomicReference<>(Instant.parse("2026-03-10T08:00:00Z"));
    private final Clock clock = ((InstantSource) now::get).withZone(ZoneOffset.UTC);
    private final JdbcClient jdbc = JdbcClient.create(TestDatabase.fresh());
    private final Attempts attempts = instance();

    private Attempts instance() {
        var delays = new AccessProperties.LockOut(5, Duration.ofSeconds(30), Duration.ofMinutes(15));
        var none = new AccessProperties.Length(Duration.ZERO, Duration.ZERO);
        return new Attempts(
                jdbc, clock, new AccessProperties(false, none, none, delays, new AccessProperties.Hash(64, 1)));
    }

    @Test
    void waitsAfterTheFifthFailureAndTwiceAsLongAfterTheNext() {
        fail(5);
        assertThat(refusedFor()).isBetween(30L, 31L);
        wait(29);
        assertThat(refusedFor()).isBetween(1L, 2L);
        wait(2);
        fail(1);
        assertThat(refusedFor()).isBetween(60L, 61L);
    }

    @Test
    void neverWaitsLongerThanTheLongest() {
        for (int failure = 0; failure < 40; failure++) {
            fail(1);
            wait(15 * 60);
        }
        fail(1);
        assertThat(refusedFor()).isBetween(900L, 901L);
    }

    @Test
    void countsAnewAfterASuccess() {
        fail(4);
        attempts.begin("somebody");
        attempts.succeeded("somebody");
        fail(4);
        attempts.begin("somebody");
    }

    @Test
    void forgetsAfterADay() {
        fail(4);
        wait(86_401);
        fail(4);
        attempts.begin("somebody");
    }

    @Test
    void countsTogetherWhateverInstanceIsAsked() {
        fail(3);
        instance().begin("somebody");
        instance().begin("somebody");
        assertThat(refusedFor()).isPositive();
        attempts.begin("somebody else");
    }

    @Test
    void letsNoMoreThroughIfManyAreMadeAtOnce() throws Exception {
        var threads = Executors.newFixedThreadPool(8);
        try {
            var begun = threads.invokeAll(IntStream.range(0, 24)
                    .mapToObj(i -> (Callable<Boolean>) this::begins)
                    .toList());
            int through = 0;
            for (var one : begun) {
                through += one.get() ? 1 : 0;
            }
            assertThat(through).isEqualTo(5);
        } finally {
            threads.shutdownNow();
        }
    }

    private boolean begins() {
        try {
            attempts.begin("somebody");
            return true;
        } catch (TryLater e) {
            return false;
        }
    }

    private void fail(int times) {
        for (int i = 0; i < times; i++) {
            attempts.begin("somebody");
        }
    }

    private void wait(int seconds) {
        now.updateAndGet(moment -> moment.plusSeconds(seconds));
    }

    private long refusedFor() {
        var seconds = new AtomicLong();
        assertThatThrownBy(() -> attempts.begin("somebody"))
                .isInstanceOfSatisfying(TryLater.class, later -> seconds.set(later.seconds()));
        return seconds.get();
    }
}
