package dev.sunthread.journal;

import java.io.ByteArrayInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.util.Arrays;
import java.util.zip.ZipException;

/**
 * What somebody hands in as a file of text, told by its first bytes and never by its name: unpacked if it is packed,
 * refused if it plainly is no text.
 */
public final class SentFile {

    private static final int LOOKED_AT = 8 * 1024;

    private SentFile() {}

    /**
     * The text as a stream, which says {@link CutFile} where a packed file breaks off.
     *
     * @throws NoText if it is a picture, a packed folder, a document or other bytes that are no text
     */
    public static InputStream text(InputStream sent) throws IOException {
        byte[] first = first(sent);
        if (FileForm.of(first) != FileForm.GZIP) {
            return text(sent, first);
        }
        InputStream unpacked = unpacked(again(first, sent));
        return text(unpacked, first(unpacked));
    }

    /** The same of a whole file. */
    public static byte[] text(byte[] sent) throws IOException {
        try (InputStream text = text(new ByteArrayInputStream(sent))) {
            return text.readAllBytes();
        } catch (CutFile e) {
            throw cut();
        }
    }

    private static InputStream text(InputStream bytes, byte[] first) {
        FileForm form = FileForm.of(first);
        if (form != FileForm.TEXT) {
            throw new NoText("The file is " + form.words() + ", not a text of lines", form.remedy());
        }
        return again(first, bytes);
    }

    private static InputStream unpacked(InputStream packed) throws IOException {
        try {
            return new Unpacked(packed);
        } catch (EOFException | ZipException e) {
            throw cut();
        }
    }

    private static NoText cut() {
        return new NoText(
                "The packed file is cut or damaged, and nothing of it was taken", "Copy or pack the file again");
    }

    /** The first bytes; of a packed file that is cut as many as there are. */
    private static byte[] first(InputStream bytes) throws IOException {
        byte[] first = new byte[LOOKED_AT];
        int count = 0;
        try {
            for (int read = bytes.read(first); read > 0; read = bytes.read(first, count, first.length - count)) {
                count += read;
            }
        } catch (CutFile e) {
            // whoever reads on is told once the bytes before it are read
        }
        return Arrays.copyOf(first, count);
    }

    /** What was read already, and the rest behind it: if reading that fails, what was read is not lost. */
    private static InputStream again(byte[] first, InputStream rest) {
        return new SequenceInputStream(new ByteArrayInputStream(first), rest);
    }
}
