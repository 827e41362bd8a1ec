package dev.sunthread.genealogy.answer;

import dev.sunthread.genealogy.AnswerLine;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;

/** Hashes that name questions and answers: equal for the same question with the same answer, in any database. */
public final class AnswerHash {

    /** Changes whenever the rules of the trace do, so that no stored answer outlives them. */
    public static final int RULES = 7;

    private static final Comparator<AnswerLine> ORDER = Comparator.comparing(AnswerLine::kind)
            .thenComparing(AnswerLine::level)
            .thenComparing(AnswerLine::item)
            .thenComparing(AnswerLine::name)
            .thenComparing(line -> String.valueOf(line.issuer()));

    private AnswerHash() {}

    public static String ofQuestion(String asked) {
        return hex(sha256(), "rules " + RULES + " " + asked);
    }

    /**
     * Over the question with its cut-off, and over what each line names and its classes; the words of reasons and places
     * don't count.
     */
    public static String of(String asked, List<AnswerLine> lines) {
        MessageDigest digest = sha256();
        digest.update((asked + "\u001d").getBytes(StandardCharsets.UTF_8));
        lines.stream()
                .sorted(ORDER)
                .forEach(line -> digest.update(String.join(
                                "\u001f",
                                line.kind(),
                                line.level(),
                                line.item(),
                                line.name(),
                                String.valueOf(line.issuer()),
                                line.ever().name(),
                                String.valueOf(line.now()),
                                String.valueOf(line.atShipment()),
                                String.valueOf(line.at()),
                                "\u001e")
                        .getBytes(StandardCharsets.UTF_8)));
        return HexFormat.of().formatHex(digest.digest());
    }

    private static String hex(MessageDigest digest, String text) {
        return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
