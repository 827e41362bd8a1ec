package dev.sunthread.journal;

import dev.sunthread.journal.JournalLine.Said;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Entries;
import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import java.util.function.LongConsumer;
import org.springframework.dao.NonTransientDataAccessException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Puts a whole export into an empty database: when and by whom things were recorded and their positions stay, so that
 * every question has the same answer as before. All of it or nothing.
 */
@Service
public class Restores {

    private final Door door;
    private final Entries entries;

    Restores(Door door, Entries entries) {
        this.door = door;
        this.entries = entries;
    }

    /**
     * Restores a journal and gives the number of its entries.
     *
     * @param progress told the number of entries restored so far, now and then
     * @throws Refused if the database is not empty or the journal is not a whole, unchanged export
     */
    @Transactional(rollbackFor = IOException.class)
    public long run(InputStream journal, LongConsumer progress) throws IOException {
        if (!entries.none()) {
            throw new Refused(
                    "The database holds records already", "Restore into an empty database, or import instead");
        }
        WholeExport export = new WholeExport(journal);
        for (Said said = export.next(); said != null; said = export.next()) {
            restore(said, export);
            reportNowAndThen(export.entries(), progress);
        }
        return export.entries();
    }

    private void restore(Said said, WholeExport export) {
        try {
            door.restore(
                    said.envelope(),
                    Objects.requireNonNull(said.recordedAt()),
                    Objects.requireNonNull(said.position()));
        } catch (Refused e) {
            throw export.refused(e.reason());
        } catch (NonTransientDataAccessException e) {
            throw export.refused("is not stored: " + e.getMostSpecificCause().getMessage());
        }
    }

    private static void reportNowAndThen(long restored, LongConsumer progress) {
        if (restored % 1000 == 0) {
            progress.accept(restored);
        }
    }
}
