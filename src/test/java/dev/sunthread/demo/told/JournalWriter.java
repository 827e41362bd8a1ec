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
        String head =
                hex(root(lines.stream().map(line -> line.envelope().hash()).toList()));
        return text.append("{\"end\":1,\"entries\":%d,\"digest\":\"%s\",\"head\":\"%s\"}\n"
                        .formatted(position, digest, head))
                .toString();
    }

    /** The root of the tree over these leaf hashes, word for word as RFC 9162 defines it in section 2.1.1. */
    private static byte[] root(List<byte[]> leaves) {
        if (leaves.size() < 2) {
            return leaves.isEmpty() ? sha256().digest() : leaves.get(0);
        }
        int left = Integer.highestOneBit(leaves.size() - 1);
        MessageDigest digest = sha256();
        digest.update((byte) 1);
        digest.update(root(leaves.subList(0, left)));
        return digest.digest(root(leaves.subList(left, leaves.size())));
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
