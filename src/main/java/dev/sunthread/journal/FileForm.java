package dev.sunthread.journal;

import java.nio.charset.StandardCharsets;

/** What a file is by its first bytes, as far as it matters for whoever expects a text of lines. */
enum FileForm {
    GZIP("packed twice", "Unpack it once and send that", "\u001f\u008b"),
    ZIP("a packed folder", "Unpack it and send the journal in it", "PK\u0003\u0004", "PK\u0005\u0006"),
    OTHER_PACKED(
            "packed in a way that is not unpacked here",
            "Unpack it, or pack it with gzip",
            "BZh",
            "\u00fd7zXZ",
            "7z\u00bc\u00af",
            "\u0028\u00b5\u002f\u00fd"),
    PICTURE(
            "a picture",
            "Send the file that the picture is of",
            "\u0089PNG",
            "\u00ff\u00d8\u00ff",
            "GIF8",
            "BM",
            "II*\u0000",
            "MM\u0000*"),
    DOCUMENT("a document", "Save what it holds as text", "%PDF-", "\u00d0\u00cf\u0011\u00e0", "{\\rtf"),
    WIDE_TEXT("text in UTF-16 or UTF-32", "Save it as UTF-8", "\u00ff\u00fe", "\u00fe\u00ff"),
    BINARY("bytes that are no text", "Send text in UTF-8, or text packed with gzip"),
    TEXT("text", "");

    private final String words;
    private final String remedy;
    private final String[] beginnings;

    FileForm(String words, String remedy, String... beginnings) {
        this.words = words;
        this.remedy = remedy;
        this.beginnings = beginnings;
    }

    /** What it is, behind "is". */
    String words() {
        return words;
    }

    /** What to send instead. */
    String remedy() {
        return remedy;
    }

    /** By the first bytes of a file; one that begins as an object does is text, whatever stands in it further on. */
    static FileForm of(byte[] first) {
        String bytes = new String(first, StandardCharsets.ISO_8859_1);
        for (FileForm form : values()) {
            for (String beginning : form.beginnings) {
                if (bytes.startsWith(beginning) && (form != PICTURE || beginning.length() > 2 || hasNought(first))) {
                    return form;
                }
            }
        }
        return hasNought(first) && !beginsAsAnObject(bytes) ? BINARY : TEXT;
    }

    private static boolean hasNought(byte[] first) {
        for (byte one : first) {
            if (one == 0) {
                return true;
            }
        }
        return false;
    }

    private static boolean beginsAsAnObject(String bytes) {
        String text = bytes.startsWith("\u00ef\u00bb\u00bf") ? bytes.substring(3) : bytes;
        return text.stripLeading().startsWith("{");
    }
}
