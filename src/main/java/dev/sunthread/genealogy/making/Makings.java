package dev.sunthread.genealogy.making;

import dev.sunthread.database.Bulkhead;
import dev.sunthread.genealogy.Stage;
import dev.sunthread.genealogy.TraceLimits;
import dev.sunthread.kernel.Busy;
import jakarta.annotation.PreDestroy;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import org.springframework.stereotype.Component;

/**
 * Makes answers, a few at a time and the others in the order they were asked, on connections and threads of their own.
 * Who asks what is being made already waits for the same; what nobody waits for any more is made no further.
 */
@Component
public class Makings {

    /** How far an answer is: how many are made before its turn, nought once it is being made, and what was reached. */
    public record Progress(Stage stage, int place, long reached) {}

    private static final Duration COME_AGAIN = Duration.ofSeconds(10);
    private static final Duration LONGEST_END = Duration.ofSeconds(10);

    private final TraceLimits limits;
    private final Clock clock;
    private final ExecutorService threads;
    // in the order they were asked
    private final Map<String, Making> open = new LinkedHashMap<>();
    private boolean closed;

    public Makings(TraceLimits limits, Clock clock) {
        this.limits = limits;
        this.clock = clock;
        this.threads = Executors.newFixedThreadPool(limits.atOnce(), work -> {
            Thread thread = new Thread(work, "makes an answer");
            thread.setDaemon(true);
            return thread;
        });
    }

    /**
     * Has an answer made and waits for it, no longer than the time.
     *
     * @param watcher who goes on waiting for it for the time of a lease, whether or not it is made in time
     * @return whether it was made in time
     * @throws Busy if too many wait for their turn
     */
    public boolean make(String id, Consumer<Watch> work, Duration wait, String watcher) {
        Making making = entered(id, work, watcher);
        try {
            making.done.get(wait.toMillis(), TimeUnit.MILLISECONDS);
            return true;
        } catch (TimeoutException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        } catch (ExecutionException e) {
            forget(making);
            if (e.getCause() instanceof RuntimeException failed) {
                throw failed;
            }
            throw new CompletionException(e.getCause());
        } finally {
            left(making, watcher);
        }
    }

    private synchronized Making entered(String id, Consumer<Watch> work, String watcher) {
        dropUnwanted();
        Making making = open.get(id);
        if (making == null) {
            making = queued(id, work);
        }
        making.enter();
        making.lease(watcher, end());
        return making;
    }

    // what failed is told to those who asked for it for the time of their lease, and begun anew for whoever asks later
    private void dropUnwanted() {
        Instant now = clock.instant();
        open.values().removeIf(one -> (one.isDone() || one.stage == Stage.WAITING) && !one.isWanted(now));
    }

    private Making queued(String id, Consumer<Watch> work) {
        if (open.values().stream().filter(one -> !one.isDone()).count() >= limits.atOnce() + limits.queue()) {
            throw new Busy(
                    "Too many answers are being made at once",
                    "Ask again in a little while; nothing is lost",
                    COME_AGAIN);
        }
        Making making = new Making(id);
        open.put(id, making);
        threads.execute(() -> run(making, work));
        return making;
    }

    private Instant end() {
        return clock.instant().plus(limits.lease());
    }

    private synchronized void left(Making making, String watcher) {
        making.leave();
        making.lease(watcher, end());
    }

    private void run(Making making, Consumer<Watch> work) {
        try {
            Watched watched = new Watched(making);
            watched.begins(Stage.SUSPECTS);
            Bulkhead.TRACES.run(() -> work.accept(watched));
            forget(making);
            making.done.complete(null);
        } catch (RuntimeException | Error e) {
            if (e instanceof NobodyWaits) {
                forget(making);
            }
            making.done.completeExceptionally(e);
        }
    }

    private synchronized void forget(Making making) {
        open.remove(making.id, making);
    }

    /** How far an answer is that is being made; the last of all where it is made no longer. */
    public synchronized Progress progress(String id) {
        Making making = open.get(id);
        if (making == null) {
            return new Progress(Stage.KEEPING, 0, 0);
        }
        return new Progress(making.stage, making.stage == Stage.WAITING ? placeOf(making) : 0, making.reached.get());
    }

    private int placeOf(Making making) {
        int place = 0;
        for (Making one : open.values()) {
            place += one.stage == Stage.WAITING && !one.isDone() ? 1 : 0;
            if (one == making) {
                break;
            }
        }
        return place;
    }

    /** Says that one who waited waits no longer; others may. */
    public synchronized void stop(String id, String watcher) {
        Making making = open.get(id);
        if (making != null) {
            making.release(watcher);
        }
    }

    @PreDestroy
    void close() throws InterruptedException {
        synchronized (this) {
            closed = true;
        }
        threads.shutdown();
        if (!threads.awaitTermination(LONGEST_END.toMillis(), TimeUnit.MILLISECONDS)) {
            threads.shutdownNow();
        }
    }

    private final class Watched implements Watch {

        private final Making making;

        Watched(Making making) {
            this.making = making;
        }

        @Override
        public void begins(Stage stage) {
            goOn();
            making.stage = stage;
        }

        @Override
        public void reached(int nodes) {
            goOn();
            making.reached.addAndGet(nodes);
        }

        // whoever asks after it is given up begins it anew
        private void goOn() {
            synchronized (Makings.this) {
                if (closed || !making.isWanted(clock.instant())) {
                    open.remove(making.id, making);
                    throw new NobodyWaits();
                }
            }
        }
    }
}
