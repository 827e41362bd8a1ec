package dev.sunthread.web.traffic;

import jakarta.servlet.ServletException;
import java.io.IOException;
import java.time.Clock;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;
import org.apache.coyote.ActionCode;
import org.apache.coyote.InputBuffer;

/**
 * Keeps bodies that are long in coming from taking up the server: only so many are waited for at a time, of each address
 * and of all, and each has to be there in a time that grows with its size. Requests without a body are never refused.
 */
final class SlowBodies extends ValveBase {

    /** So much of a body that nobody reads is waited for, so that its sender reads the answer. */
    private static final long MOST_SKIPPED = 2 * 1024 * 1024;

    private static final String SAID = "Too much is being sent at this moment. Send it again in a few seconds.\n";

    private final TrafficProperties limits;
    private final Clock clock;
    private final Semaphore all;
    private final Map<String, AtomicInteger> byAddress = new ConcurrentHashMap<>();

    SlowBodies(TrafficProperties limits, Clock clock) {
        super(true);
        this.limits = limits;
        this.clock = clock;
        this.all = new Semaphore(limits.bodies());
    }

    @Override
    public void invoke(Request request, Response response) throws IOException, ServletException {
        if (!hasBody(request)) {
            getNext().invoke(request, response);
        } else if (enter(request.getRemoteAddr())) {
            waitFor(request, response);
        } else {
            refuse(response);
            closeUnread(request);
        }
    }

    private static boolean hasBody(Request request) {
        return request.getContentLengthLong() > 0 || request.getHeader("Transfer-Encoding") != null;
    }

    private void waitFor(Request request, Response response) throws IOException, ServletException {
        String address = request.getRemoteAddr();
        InputBuffer input = request.getCoyoteRequest().getInputBuffer();
        PacedBody body = new PacedBody(input, request.getContentLengthLong(), limits, clock, () -> leave(address));
        request.getCoyoteRequest().setInputBuffer(body);
        try {
            getNext().invoke(request, response);
            if (!request.isAsync() && !request.getCoyoteRequest().hasExpectation()) {
                response.finishResponse();
                body.skip(MOST_SKIPPED);
            }
        } finally {
            request.getCoyoteRequest().setInputBuffer(input);
            if (!body.isEnded()) {
                closeUnread(request);
            }
            body.end();
        }
    }

    /** What was not read is not waited for, as the server would outside of these limits. */
    private static void closeUnread(Request request) {
        request.getCoyoteRequest().action(ActionCode.DISABLE_SWALLOW_INPUT, null);
    }

    private boolean enter(String address) {
        if (!all.tryAcquire()) {
            return false;
        }
        AtomicInteger count = byAddress.compute(address, (key, before) -> {
            AtomicInteger open = before == null ? new AtomicInteger() : before;
            open.incrementAndGet();
            return open;
        });
        if (count.get() > limits.bodiesByAddress()) {
            leave(address);
            return false;
        }
        return true;
    }

    private void leave(String address) {
        byAddress.computeIfPresent(address, (key, open) -> open.decrementAndGet() == 0 ? null : open);
        all.release();
    }

    private static void refuse(Response response) throws IOException {
        response.setStatus(503);
        response.setHeader("Retry-After", "5");
        response.setHeader("Connection", "close");
        response.setContentType("text/plain;charset=UTF-8");
        response.getWriter().write(SAID);
        response.finishResponse();
    }
}
