package dev.sunthread.journal;

import dev.sunthread.ledger.Entries;
import dev.sunthread.ledger.SealedEntry;
import dev.sunthread.ledger.Sealer;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.time.format.DateTimeFormatter;
import java.util.HexFormat;
import java.util.List;
import org.springframework.stereotype.Service;

/** Gives everything recorded as a journal, in the order of positions and in constant memory. */
@Service
public class Exports {

    private static final int PAGE = 1000;

    private final Entries entries;
    private final Sealer sealer;

    Exports(Entries entries, Sealer sealer) {
        this.entries = entries;
        this.sealer = sealer;
    }

    /** Writes all that is committed now; gives the number of entries. */
    public long write(OutputStream out) throws IOException {
        long last = sealer.seal();
        MessageDigest digest = RawLine.sha256Digest();
        OutputStream digested = new DigestOutputStream(out, digest);
        Writer writer = new BufferedWriter(new OutputStreamWriter(digested, StandardCharsets.UTF_8));
        writer.write("{\"journal\":" + JournalLine.VERSION + "}\n");
        TreeHead head = new TreeHead();
        long position = 0;
        while (position < last) {
            List<SealedEntry> page = entries.after(position, last, PAGE);
            for (SealedEntry entry : page) {
                writer.write(line(entry));
                head.add(entry.hash());
            }
            position = page.get(page.size() - 1).position();
        }
        writer.flush();
        writer.write("{\"end\":1,\"entries\":" + last + ",\"digest\":\""
                + HexFormat.of().formatHex(digest.digest()) + "\",\"head\":\"" + head.hex() + "\"}\n");
        writer.flush();
        return last;
    }

    private static String line(SealedEntry entry) {
        String envelope = entry.envelope();
        return envelope.substring(0, envelope.length() - 1)
                + ",\"recordedAt\":\"" + DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(entry.recordedAt())
                + (entry.recordedBy() == null ? "" : "\",\"recordedBy\":\"" + entry.recordedBy())
                + "\",\"position\":" + entry.position()
                + ",\"hash\":\"" + HexFormat.of().formatHex(entry.hash()) + "\"}\n";
    }
}
