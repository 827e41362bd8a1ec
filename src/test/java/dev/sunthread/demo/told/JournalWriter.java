package dev.sunthread.demo.told;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.GZIPOutputStream;

/** Writes a journal of version 1 with its heads, so that it can be restored. */
public final class JournalWriter {

    private static final int OS_BYTE = 9;
    private static final byte OS_UNKNOWN = (byte) 255;

    private JournalWriter() {}

    /** The journal as text; lines end in a line feed. */
    public static String text(List<Notebook.Line> lines) {
        StringBuilder text = new StringBuilder("{\"journal\":1}\n");
        long position = 0;
        for (Notebook.Line line : lines) {
            text.append(entry(line, ++position, line.envelope().hash())).append('\n');
        }
        String digest = sha256Of(text.toString());
        return text.append("{\"end\":1,\"entries\":%d,\"digest\":\"%s\"}\n".formatted(position, digest))
                .toString();
    }

    private static String entry(Notebook.Line line, long position, byte[] hash) {
        String canonical = line.envelope().canonical();
        return canonical.substring(0, canonical.length() - 1)
                + ",\"recordedAt\":\"" + line.recordedAt().toInstant()
                + "\",\"position\":" + position
                + ",\"hash\":\"" + hex(hash) + "\"}";
    }

    /** The text compressed, with no time and no operating system in its header. */
    public static byte[] compressed(String text) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(bytes)) {
            gzip.write(text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        byte[] file = bytes.toByteArray();
        file[OS_BYTE] = OS_UNKNOWN;
        return file;
    }

    public static String sha256Of(String text) {
        return hex(sha256().digest(text.getBytes(StandardCharsets.UTF_8)));
    }

    private static String hex(byte[] bytes) {
        return HexFormat.of().formatHex(bytes);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
