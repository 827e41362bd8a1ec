package dev.sunthread.journal;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** Streams of bytes that are made while they are read. */
final class Bytes {

    private Bytes() {}

    /** One byte so many times. */
    static InputStream repeated(char character, long times) {
        return new InputStream() {
            private long left = times;

            @Override
            public int read() {
                return left-- > 0 ? character : -1;
            }

            @Override
            public int read(byte[] into, int from, int most) {
                if (left <= 0) {
                    return -1;
                }
                int count = (int) Math.min(most, left);
                Arrays.fill(into, from, from + count, (byte) character);
                left -= count;
                return count;
            }
        };
    }

    static InputStream of(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    static InputStream joined(InputStream... streams) {
        return new SequenceInputStream(Collections.enumeration(List.of(streams)));
    }
}
