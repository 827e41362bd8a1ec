package dev.sunthread.scan.label;

import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.UnitId;

/**
 * What the codes on the plant's own labels hold: a message of ISO/IEC 15434 with format 06, whose data identifier says
 * what kind of thing the label names, so that no two kinds are taken for each other whatever their names are.
 */
public final class LabelCode {

    private static final String HEADER = "[)>\u001e06\u001d";
    private static final String END = "\u001e\u0004";
    private static final String NEXT = "\u001d";

    /** Before the id of a record on paper. */
    public static final String PAPER = "Zpaper ";

    private LabelCode() {}

    /** Item and serial, and the issuer if it is another than this plant. */
    public static String unit(UnitId id) {
        String own = "P" + id.item() + NEXT + "S" + id.serial();
        return message(id.issuer().equals(UnitId.THIS_PLANT) ? own : own + NEXT + "V" + id.issuer());
    }

    public static String lot(String number) {
        return message("T" + number);
    }

    public static String container(String label) {
        return message("3S" + label);
    }

    public static String carrier(String code) {
        return message("1B" + code);
    }

    public static String station(String code) {
        return message("20L" + code);
    }

    public static String position(String station, String code) {
        return message("20L" + station + NEXT + "21L" + code);
    }

    public static String badge(String mark) {
        return message("1H" + mark);
    }

    /** A command to the station page, such as {@code undo}. */
    public static String command(String word) {
        return message("Z" + word);
    }

    /** A record on paper, by its id; a word to the program, as a command is. */
    public static String paper(String record) {
        return message(PAPER + record);
    }

    private static String message(String fields) {
        return HEADER + fields + END;
    }

    /**
     * Refuses to print a code with letters that not every reader sends as they are: of others one sends two for one, or none,
     * and one label would start two units.
     */
    public static void refuseUnlessReadAlike(String code) {
        String others = code.replaceAll("[\u0020-\u007e" + HEADER.charAt(3) + NEXT + END + "]", "");
        if (!others.isEmpty()) {
            throw new Refused(
                    "The code of the label would hold \"" + others + "\", which readers send differently",
                    "Name it with letters A to Z, digits and signs of a plain keyboard; a unit can be relabelled");
        }
    }
}
