package dev.sunthread.journal;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * One line as it came.
 *
 * @param number its number, from 1
 * @param length its length in bytes, without the line's end
 * @param sha256 the hash of all its bytes, in hexadecimal
 * @param kept its bytes, only the beginning if it is longer than a line may be
 */
record RawLine(int number, long length, String sha256, byte[] kept) {

    boolean isCut() {
        return length > kept.length;
    }

    boolean isBlank() {
        return length == kept.length && new String(kept, StandardCharsets.ISO_8859_1).isBlank();
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
