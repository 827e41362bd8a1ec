package dev.sunthread.genealogy.making;

import dev.sunthread.genealogy.Stage;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicLong;

/** One answer that is being made or waits for its turn, shared by all who ask the same. Guarded by its queue. */
final class Making {

    final String id;
    final CompletableFuture<Void> done = new CompletableFuture<>();
    final AtomicLong reached = new AtomicLong();
    volatile Stage stage = Stage.WAITING;

    private int callers;
    private final Map<String, Instant> leases = new HashMap<>();

    Making(String id) {
        this.id = id;
    }

    boolean isDone() {
        return done.isDone();
    }

    boolean isWanted(Instant now) {
        leases.values().removeIf(end -> end.isBefore(now));
        return callers > 0 || !leases.isEmpty();
    }

    void enter() {
        callers++;
    }

    void leave() {
        callers--;
    }

    /** Whoever asks again and again waits until then, whether or not a request of theirs is open. */
    void lease(String watcher, Instant end) {
        leases.put(watcher, end);
    }

    void release(String watcher) {
        leases.remove(watcher);
    }
}
