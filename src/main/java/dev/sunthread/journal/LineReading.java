package dev.sunthread.journal;

import dev.sunthread.kernel.Refused;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Reads the lines of a file in batches, up to its end or up to where it stops: where a packed file is cut, or behind so
 * many lines in a row that are no envelopes that it hardly is a journal.
 */
final class LineReading {

    /** So many lines in a row that can't be read are asked about. */
    static final int MOST_UNREADABLE = 100;

    private static final int BATCH = 200;
    private static final int BATCH_BYTES = 16 * 1024 * 1024;

    private final LineSplitter lines;
    private final Sender sender;
    private final boolean goesOn;
    private int last;
    private int unreadable;
    private @Nullable ImportStop stop;

    LineReading(InputStream journal, Sender sender, boolean goesOn) {
        this.lines = new LineSplitter(journal);
        this.sender = sender;
        this.goesOn = goesOn;
    }

    /** The next lines that are not blank; none at the end, and none behind a stop. */
    List<ReadLine> next() throws IOException {
        List<ReadLine> batch = new ArrayList<>(BATCH);
        long bytes = 0;
        @Nullable RawLine raw = null;
        while (stop == null && batch.size() < BATCH && bytes < BATCH_BYTES && (raw = nextRaw()) != null) {
            last = raw.number();
            if (!raw.isBlank()) {
                batch.add(read(raw));
                bytes += raw.kept().length;
            }
        }
        return batch;
    }

    private @Nullable RawLine nextRaw() throws IOException {
        try {
            return lines.next();
        } catch (CutFile e) {
            stop = ImportStop.of(
                    last,
                    new Refused(
                            "The packed file is cut or damaged: line " + last + " is the last whole one",
                            "Copy or pack the file again and send it whole; what was taken in stays"));
            return null;
        }
    }

    private ReadLine read(RawLine raw) {
        ReadLine line = ReadLine.of(raw, sender);
        unreadable = line.problems().isEmpty() ? 0 : unreadable + 1;
        if (unreadable == MOST_UNREADABLE && !goesOn) {
            stop = ImportStop.askingToGoOn(
                    last,
                    new Refused(
                            "None of the last " + MOST_UNREADABLE + " lines up to line " + last + " can be read",
                            "See whether it is the right file; if it is, send it again and ask to go on"));
        }
        return line;
    }

    /** The number of the last line that was read. */
    int last() {
        return last;
    }

    /** Why it stopped before the end of the file; nothing if it did not. */
    @Nullable
    ImportStop stop() {
        return stop;
    }
}
