package dev.sunthread.web.traffic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.SocketTimeoutException;
import java.nio.ByteBuffer;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.coyote.InputBuffer;
import org.apache.tomcat.util.net.ApplicationBufferHandler;
import org.junit.jupiter.api.Test;

/** A body has its time, and more time the more of it is there. */
class PacedBodyTests {

    private static final TrafficProperties LIMITS = new TrafficProperties(9, 9, 9, Duration.ofSeconds(30), 1000);

    private final AtomicInteger ended = new AtomicInteger();
    private final Ticking clock = new Ticking();

    @Test
    void isGivenUpIfItDripsForTooLong() throws IOException {
        PacedBody body = body(100, 1, 1, 1, 1);
        body.doRead(none());
        clock.now = clock.now.plusSeconds(29);
        body.doRead(none());
        clock.now = clock.now.plusSeconds(2);
        assertThatThrownBy(() -> body.doRead(none())).isInstanceOf(SocketTimeoutException.class);
        assertThat(body.isEnded()).isFalse();
    }

    @Test
    void hasMoreTimeIfItIsLarge() throws IOException {
        PacedBody body = body(1_000_000, 100_000, 1);
        clock.now = clock.now.plusSeconds(129);
        assertThat(body.doRead(none())).isEqualTo(100_000);
        assertThat(ended).hasValue(0);
    }

    @Test
    void isWaitedForNoLongerOnceItIsAllThere() throws IOException {
        PacedBody body = body(3, 2, 1);
        body.doRead(none());
        assertThat(ended).hasValue(0);
        body.doRead(none());
        assertThat(ended).hasValue(1);
        body.end();
        assertThat(ended).hasValue(1);
    }

    @Test
    void endsWhereItsLengthIsNotKnown() throws IOException {
        PacedBody body = body(-1, 2, -1);
        body.doRead(none());
        assertThat(body.doRead(none())).isEqualTo(-1);
        assertThat(ended).hasValue(1);
    }

    private PacedBody body(long length, Integer... reads) {
        Deque<Integer> left = new ArrayDeque<>(List.of(reads));
        InputBuffer bytes = new InputBuffer() {
            @Override
            public int doRead(ApplicationBufferHandler handler) {
                return left.pop();
            }

            @Override
            public int available() {
                return left.size();
            }
        };
        return new PacedBody(bytes, length, LIMITS, clock, ended::incrementAndGet);
    }

    private static ApplicationBufferHandler none() {
        return new ApplicationBufferHandler() {
            @Override
            public void setByteBuffer(ByteBuffer buffer) {}

            @Override
            public ByteBuffer getByteBuffer() {
                return ByteBuffer.allocate(0);
            }

            @Override
            public void expand(int size) {}
        };
    }

    /** A clock that stands where it was put. */
    private static final class Ticking extends Clock {

        private Instant now = Instant.parse("2026-03-02T06:00:00Z");

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
