package dev.sunthread.journal;

import dev.sunthread.journal.JournalLine.End;
import dev.sunthread.journal.JournalLine.Said;
import dev.sunthread.journal.JournalLine.Start;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.Recorded;
import dev.sunthread.ledger.Restoration;
import dev.sunthread.ledger.body.Unreadable;
import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/**
 * Reads an export from its first line to its last and refuses, with the line's number, whatever is not as it was
 * exported. What it gives before it came to the end is not proven yet.
 */
final class WholeExport {

    private static final String OTHER_VERSION =
            "Restore it with the version that wrote it, or a newer one; nothing was restored";

    private static final String REMEDY = "Take a whole, unchanged export; nothing was restored";

    /** An entry as exported, with its line. */
    record Entry(int line, Envelope envelope, Recorded recorded) {

        Restoration.Entered entered() {
            return new Restoration.Entered(envelope, recorded);
        }

        /** Says what is wrong with it. */
        Refused refused(String reason) {
            return WholeExport.refused(line, reason);
        }

        /** Says what is wrong with it; its hash fits, so that what can't be read is as it was exported. */
        Refused refused(Refused e) {
            return e instanceof Unreadable
                    ? new Refused("Line " + line + ": " + e.reason(), OTHER_VERSION)
                    : refused(e.reason());
        }
    }

    private final LineSplitter lines;
    private final MessageDigest digest = RawLine.sha256Digest();
    private final TreeHead head = new TreeHead();
    private int line;
    private long entries;

    /** @throws Refused if the first line is not that of a journal */
    WholeExport(InputStream journal) throws IOException {
        this.lines = new LineSplitter(journal);
        if (!(readNext() instanceof Start)) {
            throw refused("is not the first line of a journal");
        }
    }

    /** The next entry, or nothing once the last line has proven that all are there. */
    @Nullable
    Entry next() throws IOException {
        JournalLine next = readNext();
        if (next instanceof End end) {
            everythingIsThere(end);
            nothingFollows();
            return null;
        }
        if (!(next instanceof Said said) || said.recorded() == null || said.position() == null) {
            throw refused("is no exported entry");
        }
        positionIsTheNext(said.position());
        head.add(said.envelope().hash());
        return new Entry(line, said.envelope(), said.recorded());
    }

    /** Says what is wrong with the line that was read last. */
    private Refused refused(String reason) {
        return refused(line, reason);
    }

    private static Refused refused(int line, String reason) {
        return new Refused("Line " + line + ": " + reason, REMEDY);
    }

    private @Nullable RawLine nextRaw() throws IOException {
        try {
            return lines.next();
        } catch (CutFile e) {
            throw new Refused(
                    "The packed file is cut or damaged behind line " + line,
                    "Copy or pack the export again; nothing was restored");
        }
    }

    private JournalLine readNext() throws IOException {
        RawLine raw = nextRaw();
        if (raw == null) {
            throw new Refused("The journal has no last line: it is cut", REMEDY);
        }
        line = raw.number();
        try {
            JournalLine read = JournalLine.read(raw);
            if (!(read instanceof End)) {
                digest.update(raw.kept());
                digest.update((byte) '\n');
            }
            return read;
        } catch (Refused e) {
            throw isOfANewerProgram(e)
                    ? new Refused("Line " + line + ": " + e.reason(), OTHER_VERSION)
                    : refused(e.reason());
        }
    }

    private static boolean isOfANewerProgram(Refused e) {
        return e instanceof Unreadable unreadable
                && unreadable.problems().stream()
                        .anyMatch(problem -> problem.reason().contains("a newer program"));
    }

    private void positionIsTheNext(long position) {
        if (position != ++entries) {
            throw refused("is position " + position + " where " + entries + " belongs");
        }
    }

    private void everythingIsThere(End end) {
        if (end.entries() != entries) {
            throw refused("says " + end.entries() + " entries where there are " + entries);
        }
        if (!end.digest().equals(HexFormat.of().formatHex(digest.digest()))) {
            throw refused("its hash does not fit the lines before it: one of them was changed");
        }
        if (end.head() != null && !end.head().equals(head.hex())) {
            throw refused("its head is not that of the entries before it: they stand in another order, or are others");
        }
    }

    private void nothingFollows() throws IOException {
        for (RawLine raw = nextRaw(); raw != null; raw = nextRaw()) {
            if (!raw.isBlank()) {
                line = raw.number();
                throw refused("stands behind the last line");
            }
        }
    }
}
