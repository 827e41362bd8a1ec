package dev.sunthread.journal;

import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Entries;
import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.function.LongConsumer;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Puts a whole export into an empty database: when and by whom things were recorded and their positions stay, so that
 * every question has the same answer as before. All of it or nothing.
 */
@Service
public class Restores {

    private static final String REMEDY = "Take a whole, unchanged export; nothing was restored";

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
        LineSplitter lines = new LineSplitter(journal);
        MessageDigest digest = LineSplitter.sha256();
        long restored = 0;
        for (RawLine raw = lines.next(); raw != null; raw = lines.next()) {
            JournalLine line = raw.isBlank() ? new JournalLine.Start() : read(raw);
            if (line instanceof JournalLine.End end) {
                everythingIsThere(end, raw, restored, digest);
                return restored;
            }
            if (line instanceof JournalLine.Said said) {
                restore(said, raw, ++restored, digest);
                reportNowAndThen(restored, progress);
            }
        }
        throw new Refused("The journal has no last line: it is cut", REMEDY);
    }

    private static JournalLine read(RawLine raw) {
        try {
            return JournalLine.read(raw);
        } catch (Refused e) {
            throw atLine(raw, e.reason());
        }
    }

    private static void everythingIsThere(JournalLine.End end, RawLine raw, long restored, MessageDigest digest) {
        if (end.entries() != restored
                || !HexFormat.of().formatHex(digest.digest()).equals(end.digest())) {
            throw atLine(raw, "the count or hash over all entries differs");
        }
    }

    private void restore(JournalLine.Said said, RawLine raw, long position, MessageDigest digest) {
        if (said.recordedAt() == null || said.position() == null || said.position() != position) {
            throw atLine(raw, "when it was recorded or position " + position + " is missing");
        }
        if (!said.hashIsRight()) {
            throw atLine(raw, "the hash does not fit the envelope");
        }
        digest.update(said.envelope().hash());
        try {
            door.restore(said.envelope(), said.recordedAt(), position);
        } catch (Refused e) {
            throw atLine(raw, e.reason());
        }
    }

    private static void reportNowAndThen(long restored, LongConsumer progress) {
        if (restored % 1000 == 0) {
            progress.accept(restored);
        }
    }

    private static Refused atLine(RawLine raw, String reason) {
        return new Refused("Line " + raw.number() + ": " + reason, REMEDY);
    }
}
