package dev.sunthread.genealogy.making;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.genealogy.Stage;
import dev.sunthread.genealogy.TraceLimits;
import dev.sunthread.kernel.Busy;
import dev.sunthread.kernel.Refused;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Few answers are made at a time; the others wait in order, shared, and only while somebody waits for them. */
class MakingsTests {

    private static final Duration NO_TIME = Duration.ZERO;
    private static final Duration LONG = Duration.ofMinutes(1);
    private static final Duration LEASE = Duration.ofSeconds(20);

    private final Time time = new Time();
    private final Makings makings =
            new Makings(new TraceLimits(1, 2, NO_TIME, LONG, LEASE, Duration.ofDays(7), 100), time);
    private final Semaphore steps = new Semaphore(0);
    private final CountDownLatch begun = new CountDownLatch(1);
    private final AtomicInteger made = new AtomicInteger();

    /** Goes on a node for each permit, and says when it has begun. */
    private final Consumer<Watch> held = watch -> {
        watch.begins(Stage.SEARCH);
        begun.countDown();
        for (int node = 0; node < 3; node++) {
            steps.acquireUninterruptibly();
            watch.reached(5);
        }
        made.incrementAndGet();
    };

    @AfterEach
    void letGo() throws InterruptedException {
        steps.release(100);
        makings.close();
    }

    @Test
    void tellsHowFarAnAnswerIsAndWhichPlaceAnotherHas() throws InterruptedException {
        assertThat(makings.make("a", held, NO_TIME, "one")).isFalse();
        begun.await();
        makings.make("b", watch -> {}, NO_TIME, "one");
        makings.make("c", watch -> {}, NO_TIME, "one");
        assertThat(makings.progress("a")).isEqualTo(new Makings.Progress(Stage.SEARCH, 0, 0));
        assertThat(makings.progress("b")).isEqualTo(new Makings.Progress(Stage.WAITING, 1, 0));
        assertThat(makings.progress("c")).isEqualTo(new Makings.Progress(Stage.WAITING, 2, 0));
    }

    @Test
    void refusesWhatComesWhenTheQueueIsFullAndSaysWhenToComeAgain() throws InterruptedException {
        makings.make("a", held, NO_TIME, "one");
        begun.await();
        makings.make("b", watch -> {}, NO_TIME, "one");
        makings.make("c", watch -> {}, NO_TIME, "one");
        assertThatThrownBy(() -> makings.make("d", watch -> {}, NO_TIME, "one"))
                .isInstanceOfSatisfying(
                        Busy.class, busy -> assertThat(busy.comeAgain()).isPositive());
        assertThat(makings.make("a", held, NO_TIME, "two")).isFalse();
    }

    @Test
    void makesOneAnswerForAllWhoAskTheSame() throws InterruptedException {
        makings.make("a", held, NO_TIME, "one");
        begun.await();
        assertThat(makings.make("a", held, NO_TIME, "two")).isFalse();
        steps.release(6);
        // its turn comes once all before it are made
        assertThat(makings.make("b", watch -> {}, LONG, "one")).isTrue();
        assertThat(made).hasValue(1);
    }

    @Test
    void makesNoFurtherWhatNobodyAskedAfterForTheTimeOfALease() throws InterruptedException {
        makings.make("a", held, NO_TIME, "one");
        begun.await();
        time.goesOn(LEASE.plusSeconds(1));
        steps.release(3);
        // its turn comes once the first is given up
        assertThat(makings.make("b", watch -> {}, LONG, "one")).isTrue();
        assertThat(made).hasValue(0);
    }

    @Test
    void makesOnWhileOneOfTwoWhoAskedWaits() throws InterruptedException {
        makings.make("a", held, NO_TIME, "one");
        begun.await();
        makings.make("a", held, NO_TIME, "two");
        makings.stop("a", "one");
        steps.release(3);
        makings.make("b", watch -> {}, LONG, "one");
        assertThat(made).hasValue(1);
    }

    @Test
    void makesNoFurtherWhatIsStopped() throws InterruptedException {
        makings.make("a", held, NO_TIME, "one");
        begun.await();
        makings.stop("a", "one");
        steps.release(6);
        makings.make("b", watch -> {}, LONG, "one");
        assertThat(made).hasValue(0);
        assertThat(makings.make("a", held, LONG, "one")).isTrue();
    }

    @Test
    void tellsWhoAskedWhatRefusedIt() {
        Consumer<Watch> refusing = watch -> {
            throw new Refused("No such lot", "Give another");
        };
        assertThatThrownBy(() -> makings.make("a", refusing, LONG, "one")).hasMessage("No such lot");
        assertThatThrownBy(() -> makings.make("a", refusing, LONG, "one")).hasMessage("No such lot");
    }

    @Test
    void beginsAnewWhatFailedOnceNobodyWaitsForItAnyMore() throws InterruptedException {
        CountDownLatch failing = new CountDownLatch(1);
        makings.make("a", held, NO_TIME, "one");
        begun.await();
        makings.make(
                "b",
                watch -> {
                    failing.countDown();
                    throw new IllegalStateException("The database is away");
                },
                NO_TIME,
                "one");
        makings.make("c", watch -> {}, NO_TIME, "one");
        steps.release(3);
        failing.await();
        // made after what failed, which is told to nobody
        assertThat(makings.make("c", watch -> {}, LONG, "one")).isTrue();
        time.goesOn(LEASE.plusSeconds(1));
        assertThat(makings.make("b", watch -> made.addAndGet(10), LONG, "one")).isTrue();
        assertThat(made).hasValue(11);
    }

    /** A clock that goes on when it is told to. */
    private static final class Time extends Clock {

        private volatile Instant now = Instant.parse("2026-03-02T10:00:00Z");

        void goesOn(Duration time) {
            now = now.plus(time);
        }

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }
}
