package dev.sunthread.database;

import java.util.function.Supplier;

/**
 * Parts of the application that have database connections of their own, so that one that is busy leaves the others
 * theirs. Whatever a thread does belongs to the part it entered last, and to the pages where it entered none; a
 * transaction keeps the connection that it began with.
 */
public enum Bulkhead {
    PAGES,
    STATIONS,
    TRACES,
    FILES,
    IMPORTS;

    private static final ThreadLocal<Bulkhead> ENTERED = ThreadLocal.withInitial(() -> PAGES);

    static Bulkhead entered() {
        return ENTERED.get();
    }

    /** What leads back to the part that was entered before. */
    public interface Way extends AutoCloseable {
        @Override
        void close();
    }

    /** Enters this part, until the way back is taken. */
    public Way enter() {
        Bulkhead before = ENTERED.get();
        ENTERED.set(this);
        return () -> ENTERED.set(before);
    }

    public void run(Runnable work) {
        try (Way back = enter()) {
            work.run();
        }
    }

    public <T> T call(Supplier<T> work) {
        try (Way back = enter()) {
            return work.get();
        }
    }
}
