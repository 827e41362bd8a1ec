package dev.sunthread.paper;

import dev.sunthread.kernel.Refused;
import dev.sunthread.scan.label.LabelCode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.regex.Pattern;

/**
 * The id of one blank record on paper, such as {@code 7K3QM-24-R}: five characters of its sheet, two of its own, and a
 * check character, none of them easily taken for another. Case, spaces and hyphens make no difference where it is typed.
 *
 * @param sheet the code of the sheet
 * @param own what tells it from the others of the sheet
 */
public record RecordId(String sheet, String own) {

    private static final String CHARACTERS = "23456789ABCDEFGHJKMNPQRSTUVWXYZ";
    private static final int SHEET = 5;
    private static final int ALL = SHEET + 3;
    private static final Pattern FORM = Pattern.compile("[" + CHARACTERS + "]{" + ALL + "}");

    /** A code for a sheet, drawn at random. */
    static String sheetCode(Random random) {
        StringBuilder code = new StringBuilder();
        random.ints(SHEET, 0, CHARACTERS.length()).forEach(i -> code.append(CHARACTERS.charAt(i)));
        return code.toString();
    }

    /** The first so many ids of a sheet; those whose check character could be misread are passed over. */
    static List<RecordId> first(String sheet, int many) {
        List<RecordId> ids = new ArrayList<>();
        for (int i = 0; ids.size() < many; i++) {
            RecordId id = new RecordId(
                    sheet,
                    "" + CHARACTERS.charAt(i / CHARACTERS.length()) + CHARACTERS.charAt(i % CHARACTERS.length()));
            if (CHARACTERS.indexOf(id.check()) >= 0) {
                ids.add(id);
            }
        }
        return ids;
    }

    /** The id that was typed or scanned. @throws Refused if it can't be one, or was mistyped */
    public static RecordId read(String typed) {
        String bare = scanned(typed).replaceAll("[-\\s]", "").toUpperCase(Locale.ROOT);
        if (!FORM.matcher(bare).matches()) {
            throw new Refused(
                    "\"" + typed.strip() + "\" is no id of a record on paper",
                    "Scan the code of the record, or type its eight letters and digits as printed, such as 7K3QM-24-R;"
                            + " there is no 0, 1, I, L or O in it");
        }
        RecordId id = new RecordId(bare.substring(0, SHEET), bare.substring(SHEET, ALL - 1));
        if (id.check() != bare.charAt(ALL - 1)) {
            throw new Refused(
                    "\"" + typed.strip() + "\" was mistyped: its check character does not fit",
                    "Compare it with the paper character by character and type it again");
        }
        return id;
    }

    /** What stands in the code of a record, or the text itself if it is no code. */
    private static String scanned(String typed) {
        int begin = typed.indexOf(LabelCode.PAPER);
        return begin < 0
                ? typed.strip()
                : typed.substring(begin + LabelCode.PAPER.length()).replaceAll("[^-0-9A-Z].*", "");
    }

    private char check() {
        return CheckCharacter.of(sheet + own);
    }

    /** The id as printed. */
    public String text() {
        return sheet + "-" + own + "-" + check();
    }

    /** The id of the envelope that says that this record was entered. */
    public String envelope() {
        return "paper-" + text();
    }
}
