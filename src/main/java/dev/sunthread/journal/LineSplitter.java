package dev.sunthread.journal;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/** Splits a stream of bytes into lines in constant memory, however long a line is. */
final class LineSplitter {

    /** A longer line can't be an envelope; its hash and length are still told. */
    static final int LONGEST = 8 * 1024 * 1024;

    private static final int KEPT_OF_LONGER = 64 * 1024;

    private final InputStream in;
    private int number;

    LineSplitter(InputStream in) {
        this.in = new BufferedInputStream(in, 64 * 1024);
    }

    /** The next line, or nothing at the end of the stream. */
    @Nullable
    RawLine next() throws IOException {
        int first = in.read();
        if (first < 0) {
            return null;
        }
        ByteArrayOutputStream kept = new ByteArrayOutputStream(512);
        MessageDigest digest = sha256();
        long length = 0;
        for (int b = first; b >= 0 && b != '\n'; b = in.read()) {
            length++;
            digest.update((byte) b);
            if (kept.size() < LONGEST) {
                kept.write(b);
            }
        }
        return line(kept.toByteArray(), digest, length);
    }

    private RawLine line(byte[] bytes, MessageDigest digest, long length) {
        byte[] kept = length > LONGEST ? java.util.Arrays.copyOf(bytes, KEPT_OF_LONGER) : bytes;
        return new RawLine(++number, length, HexFormat.of().formatHex(digest.digest()), kept);
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
