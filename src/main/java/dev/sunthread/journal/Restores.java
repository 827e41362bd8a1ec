package dev.sunthread.journal;

import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Restoration;
import dev.sunthread.ledger.RestoredEntries;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongConsumer;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.dao.NonTransientDataAccessException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionException;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Puts a whole export into an empty database: when and by whom things were recorded and their positions stay, so that
 * every question has the same answer as before. All of it or nothing, while nobody else records.
 */
@Service("restores")
public class Restores {

    private static final Logger LOG = LoggerFactory.getLogger(Restores.class);
    private static final long NOT_RUNNING = -1;
    private static final int AT_ONCE = 200;

    private final AtomicLong running = new AtomicLong(NOT_RUNNING);
    private final Door door;
    private final RestoredEntries entries;
    private final TransactionTemplate transaction;

    Restores(Door door, RestoredEntries entries, PlatformTransactionManager transactions) {
        this.door = door;
        this.entries = entries;
        this.transaction = new TransactionTemplate(transactions);
    }

    /**
     * Restores a journal and gives the number of its entries.
     *
     * @param progress told the number of entries restored so far, now and then
     * @throws Refused if the database is not empty or the journal is not a whole, unchanged export
     */
    public long run(InputStream journal, LongConsumer progress) throws IOException {
        if (!running.compareAndSet(NOT_RUNNING, 0)) {
            throw new Refused("A restore runs already", "Wait until it has ended");
        }
        try {
            long restored = committed(journal, progress);
            entries.countAnew();
            return restored;
        } finally {
            running.set(NOT_RUNNING);
        }
    }

    /** How many entries the restore that runs here has read in so far; nothing if none runs. Nobody sees them before its end. */
    public @Nullable Long running() {
        long count = running.get();
        return count == NOT_RUNNING ? null : count;
    }

    private long committed(InputStream journal, LongConsumer progress) throws IOException {
        try {
            return transaction.execute(status -> restore(journal, progress));
        } catch (UncheckedIOException e) {
            throw e.getCause();
        } catch (DataAccessException | TransactionException e) {
            if (!StoreFault.isNoRoom(e)) {
                throw e;
            }
            LOG.warn("A restore stops", e);
            throw StoreFault.noRoom(e);
        }
    }

    private long restore(InputStream journal, LongConsumer progress) {
        Restoration restoration = door.restoration();
        long restored = 0;
        try (ReadAhead export = new ReadAhead(new WholeExport(journal))) {
            for (var next = export.next(AT_ONCE); !next.isEmpty(); next = export.next(AT_ONCE)) {
                restoration.open(next.stream().map(WholeExport.Entry::entered).toList());
                for (WholeExport.Entry entry : next) {
                    restore(entry, restoration);
                    running.set(++restored);
                    reportNowAndThen(restored, progress);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        restoration.end();
        return restored;
    }

    private static void restore(WholeExport.Entry entry, Restoration restoration) {
        try {
            restoration.record(entry.envelope());
        } catch (Refused e) {
            throw entry.refused(e);
        } catch (NonTransientDataAccessException e) {
            if (StoreFault.isNoRoom(e)) {
                throw e;
            }
            throw entry.refused("is not stored: " + StoreFault.words(e));
        }
    }

    private static void reportNowAndThen(long restored, LongConsumer progress) {
        if (restored % 1000 == 0) {
            progress.accept(restored);
        }
    }
}
