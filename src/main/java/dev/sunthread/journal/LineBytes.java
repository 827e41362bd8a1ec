package dev.sunthread.journal;

import java.io.ByteArrayOutputStream;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/** The bytes of one line as they come in; of a line longer than any envelope only the beginning stays. */
final class LineBytes {

    private static final int KEPT_OF_LONGER = 64 * 1024;
    private static final byte[] CARRIAGE_RETURN = {'\r'};

    private ByteArrayOutputStream kept = new ByteArrayOutputStream(512);
    private long length;
    private @Nullable MessageDigest ofLonger;
    private boolean returned;

    /** Adds bytes; a carriage return counts only once something follows it. */
    void add(byte[] bytes, int from, int count) {
        if (count == 0) {
            return;
        }
        if (returned) {
            put(CARRIAGE_RETURN, 0, 1);
        }
        returned = bytes[from + count - 1] == '\r';
        put(bytes, from, returned ? count - 1 : count);
    }

    private void put(byte[] bytes, int from, int count) {
        length += count;
        if (ofLonger == null && length > RawLine.LONGEST) {
            ofLonger = RawLine.sha256Digest();
            ofLonger.update(kept.toByteArray());
        }
        if (ofLonger == null) {
            kept.write(bytes, from, count);
        } else {
            ofLonger.update(bytes, from, count);
            keepTheBeginningOnly();
        }
    }

    private void keepTheBeginningOnly() {
        if (kept.size() > KEPT_OF_LONGER) {
            byte[] beginning = Arrays.copyOf(kept.toByteArray(), KEPT_OF_LONGER);
            kept = new ByteArrayOutputStream(0);
            kept.writeBytes(beginning);
        }
    }

    RawLine toRaw(int number) {
        String hash = ofLonger == null ? null : HexFormat.of().formatHex(ofLonger.digest());
        return new RawLine(number, length, hash, kept.toByteArray());
    }
}
