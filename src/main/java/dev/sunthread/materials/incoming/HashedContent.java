package dev.sunthread.materials.incoming;

import dev.sunthread.ledger.body.Unreadable;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HexFormat;

/** Bytes that come as text with their hash. */
final class HashedContent {

    private static final int MOST_BYTES = 1_048_576;

    private HashedContent() {}

    /** @throws Unreadable if the text is no base64, is too long, or is not what was hashed */
    static byte[] read(String base64, String sha256) {
        byte[] content = decoded(base64);
        if (content.length > MOST_BYTES) {
            throw Unreadable.at(
                    "body.content", "has more than " + MOST_BYTES + " bytes", "Attach a smaller file, or parts of it");
        }
        if (!hash(content).equals(sha256)) {
            throw Unreadable.at(
                    "body.sha256",
                    "is not the SHA-256 of the content, which was changed on its way or belongs to another file",
                    "Send the file and its hash anew");
        }
        return content;
    }

    private static byte[] decoded(String base64) {
        try {
            return Base64.getDecoder().decode(base64);
        } catch (IllegalArgumentException e) {
            throw Unreadable.at("body.content", "is no whole base64", "Send the file anew, with its padding");
        }
    }

    private static String hash(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
