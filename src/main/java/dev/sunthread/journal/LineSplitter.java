package dev.sunthread.journal;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Splits a stream of bytes into lines in constant memory, however long a line is. A line ends with a line feed, before
 * which a carriage return may stand; a byte order mark before the first line is passed over.
 */
final class LineSplitter {

    private static final byte[] BYTE_ORDER_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private final InputStream in;
    private final byte[] buffer = new byte[64 * 1024];
    private int next;
    private int end;
    private int number;

    LineSplitter(InputStream in) {
        this.in = in;
    }

    /** The next line, or nothing at the end of the stream. */
    @Nullable
    RawLine next() throws IOException {
        if (number == 0) {
            passOverByteOrderMark();
        }
        if (!fill()) {
            return null;
        }
        LineBytes line = new LineBytes();
        while (!takeUpToLineFeed(line) && fill()) {
            // a long line goes on in the next filling
        }
        return line.toRaw(++number);
    }

    private void passOverByteOrderMark() throws IOException {
        end = in.readNBytes(buffer, 0, BYTE_ORDER_MARK.length);
        if (Arrays.equals(buffer, 0, end, BYTE_ORDER_MARK, 0, BYTE_ORDER_MARK.length)) {
            next = end;
        }
    }

    /** Whether there is something left to read. */
    private boolean fill() throws IOException {
        if (next == end) {
            next = 0;
            end = Math.max(in.read(buffer), 0);
        }
        return next < end;
    }

    /** Whether a line feed was met. */
    private boolean takeUpToLineFeed(LineBytes line) {
        int stop = next;
        while (stop < end && buffer[stop] != '\n') {
            stop++;
        }
        line.add(buffer, next, stop - next);
        boolean met = stop < end;
        next = met ? stop + 1 : stop;
        return met;
    }
}
