package dev.sunthread.journal;

import dev.sunthread.journal.WholeExport.Entry;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;

/** Reads and checks an export on a thread of its own while what was read before is recorded; never far ahead. */
final class ReadAhead implements AutoCloseable {

    /** In characters of envelopes. */
    private static final int ROOM = 4 * 1024 * 1024;

    /** An entry, or the end of the export, or why it can't be read. */
    private record Read(@Nullable Entry entry, @Nullable Throwable failure) {}

    private final BlockingQueue<Read> read = new LinkedBlockingQueue<>();
    private final Semaphore room = new Semaphore(ROOM);
    private final Thread reader;

    ReadAhead(WholeExport export) {
        reader = new Thread(() -> readAll(export), "reads the export ahead");
        reader.setDaemon(true);
        reader.start();
    }

    private @Nullable Entry next() throws IOException {
        Read next = takeNext();
        if (next.failure() instanceof IOException e) {
            throw e;
        }
        if (next.failure() instanceof RuntimeException e) {
            throw e;
        }
        if (next.failure() instanceof Error e) {
            throw e;
        }
        if (next.entry() != null) {
            room.release(size(next.entry()));
        }
        return next.entry();
    }

    /**
     * The next entries, as many as were read already, at least one and at most so many; none once the last line has proven
     * that all are there.
     *
     * @throws dev.sunthread.kernel.Refused as {@link WholeExport#next()} does, once all before it were given
     */
    List<Entry> next(int most) throws IOException {
        List<Entry> next = new ArrayList<>();
        for (Entry entry = next(); entry != null; entry = isNext() && next.size() < most ? next() : null) {
            next.add(entry);
        }
        return next;
    }

    private boolean isNext() {
        Read next = read.peek();
        return next != null && next.entry() != null;
    }

    private Read takeNext() {
        try {
            return read.take();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while an export was read", e);
        }
    }

    private void readAll(WholeExport export) {
        try {
            Entry entry = export.next();
            while (entry != null) {
                room.acquire(size(entry));
                read.add(new Read(entry, null));
                entry = export.next();
            }
            read.add(new Read(null, null));
        } catch (InterruptedException e) {
            // nobody takes any more
        } catch (Throwable e) {
            read.add(new Read(null, e));
        }
    }

    private static int size(Entry entry) {
        return Math.min(entry.envelope().canonical().length(), ROOM);
    }

    /** Ends the reading, even in the middle; the stream is not used any more afterwards. */
    @Override
    public void close() {
        reader.interrupt();
        boolean interrupted = false;
        while (reader.isAlive()) {
            try {
                reader.join();
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
