package dev.sunthread.web.traffic;

import java.io.IOException;
import java.net.SocketTimeoutException;
import java.nio.ByteBuffer;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicBoolean;
import org.apache.coyote.InputBuffer;
import org.apache.tomcat.util.net.ApplicationBufferHandler;

/** The body of one request, read no longer than its size allows; says once when it is all there or given up. */
final class PacedBody implements InputBuffer {

    private final InputBuffer body;
    private final long length;
    private final TrafficProperties limits;
    private final Clock clock;
    private final Runnable ended;
    private final Instant begun;
    private final AtomicBoolean isEnded = new AtomicBoolean();
    private long read;

    /** @param length in bytes; negative if it is not known beforehand */
    PacedBody(InputBuffer body, long length, TrafficProperties limits, Clock clock, Runnable ended) {
        this.body = body;
        this.length = length;
        this.limits = limits;
        this.clock = clock;
        this.ended = ended;
        this.begun = clock.instant();
    }

    @Override
    public int doRead(ApplicationBufferHandler handler) throws IOException {
        int count = body.doRead(handler);
        read += Math.max(count, 0);
        if (count < 0 || length >= 0 && read >= length) {
            end();
        } else if (isLate()) {
            throw new SocketTimeoutException("The body of the request was too long in coming");
        }
        return count;
    }

    private boolean isLate() {
        Duration allowed = limits.bodyWithin().plusSeconds(read / limits.bodyPace());
        return Duration.between(begun, clock.instant()).compareTo(allowed) > 0;
    }

    @Override
    public int available() {
        return body.available();
    }

    /** Waits for nothing of it any more. */
    void end() {
        if (isEnded.compareAndSet(false, true)) {
            ended.run();
        }
    }

    boolean isEnded() {
        return isEnded.get();
    }

    /** Reads up to so many bytes more of a body that nobody reads. */
    void skip(long most) {
        long last = read + most;
        try {
            Passed passed = new Passed();
            while (!isEnded() && read < last) {
                doRead(passed);
            }
        } catch (IOException e) {
            // nobody asked for it
        }
    }

    /** Holds what was read last, for nobody. */
    private static final class Passed implements ApplicationBufferHandler {

        private ByteBuffer bytes = ByteBuffer.allocate(0);

        @Override
        public void setByteBuffer(ByteBuffer buffer) {
            bytes = buffer;
        }

        @Override
        public ByteBuffer getByteBuffer() {
            return bytes;
        }

        @Override
        public void expand(int size) {}
    }
}
