package dev.sunthread.journal;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One line as it came.
 *
 * @param number its number, from 1
 * @param length its length in bytes, without the line's end
 * @param hashOfLonger the hash of all its bytes, in hexadecimal, if it is longer than a line may be
 * @param kept its bytes, only the beginning if it is longer than a line may be
 */
record RawLine(int number, long length, @Nullable String hashOfLonger, byte[] kept) {

    /** A longer line can't be an envelope; its hash and length are still told. */
    static final int LONGEST = 8 * 1024 * 1024;

    boolean isCut() {
        return hashOfLonger != null;
    }

    boolean isBlank() {
        if (isCut()) {
            return false;
        }
        for (byte b : kept) {
            if (b < 0 || !Character.isWhitespace(b)) {
                return false;
            }
        }
        return true;
    }

    /** The hash of all the line's bytes, in hexadecimal. */
    String sha256() {
        return hashOfLonger != null
                ? hashOfLonger
                : HexFormat.of().formatHex(sha256Digest().digest(kept));
    }

    static MessageDigest sha256Digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The line's text, if its bytes are UTF-8. */
    Optional<String> text() {
        try {
            return Optional.of(StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(kept))
                    .toString());
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }

    /** The line as far as it can be shown: bytes that are no text stand as the replacement character. */
    String shown() {
        return new String(kept, StandardCharsets.UTF_8);
    }
}
