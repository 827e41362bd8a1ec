package dev.sunthread.journal;

import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.body.TextForm;

/**
 * Who hands lines in.
 *
 * @param actor the mark of the person or machine
 * @param file the file or address the lines come from, as far as it can be kept
 * @param isActor whether the lines are this person's or machine's own words, whoever they name as actor
 */
public record Sender(String actor, String file, boolean isActor) {

    private static final int LONGEST_FILE = 200;

    public Sender {
        if (!TextForm.CODE.fits(actor)) {
            throw new Refused(
                    "The actor is not text of " + TextForm.CODE.described(), "Give the mark of the person or machine");
        }
        file = kept(file);
    }

    /** Somebody who hands in what others said. */
    public Sender(String actor, String file) {
        this(actor, file, false);
    }

    private static String kept(String file) {
        String visible = file.codePoints()
                .map(c -> TextForm.CODE.fits(Character.toString(c)) || c == ' ' ? c : '_')
                .limit(LONGEST_FILE / 2)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString()
                .strip();
        return visible.isEmpty() ? "unnamed" : visible;
    }
}
