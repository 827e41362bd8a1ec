package dev.sunthread.journal;

import java.io.EOFException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PushbackInputStream;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipException;

/** Unpacks gzip (RFC 1952), also of several members behind each other however slowly they come, and says where it is cut. */
final class Unpacked extends FilterInputStream {

    Unpacked(InputStream packed) throws IOException {
        super(new GZIPInputStream(new Waiting(packed), 64 * 1024));
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] bytes, int from, int count) throws IOException {
        try {
            return super.read(bytes, from, count);
        } catch (EOFException | ZipException e) {
            throw new CutFile(e);
        }
    }

    /** Waits for the next byte where it is asked whether there is any: else the members behind the first would be dropped. */
    private static final class Waiting extends PushbackInputStream {

        Waiting(InputStream in) {
            super(in, 1);
        }

        @Override
        public int available() throws IOException {
            int next = read();
            if (next >= 0) {
                unread(next);
            }
            return next < 0 ? 0 : Math.max(1, super.available());
        }
    }
}
