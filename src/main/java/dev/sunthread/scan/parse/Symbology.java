package dev.sunthread.scan.parse;

import java.util.Optional;
import java.util.Set;

/** What the symbology identifier (ISO/IEC 15424) before a scanned text says of it. */
enum Symbology {
    /** Text with FNC1 at its beginning: a GS1 element string. */
    GS1,
    /** Thirteen, eight or fourteen digits of a trade item number. */
    TRADE_ITEM,
    /** Any text in a linear code, where a label often has one field in a code. */
    LINEAR,
    /** Any text in a code of another kind. */
    OTHER;

    private static final Set<String> WITH_FNC1 = Set.of("C1", "e0", "d2", "Q3", "J1", "d5", "Q4");
    private static final Set<String> TRADE_ITEMS = Set.of("E0", "E4");
    private static final String LINEAR_CODES = "ACFGI";
    private static final String OTHER_CODES = "LQdJzEeX";

    /** The length of a symbology identifier: a bracket, the code's letter, its modifier. */
    static final int LENGTH = 3;

    static boolean begins(String text) {
        return text.startsWith("]");
    }

    /** Of a text that begins with a symbology identifier; empty if it is not known. */
    static Optional<Symbology> of(String text) {
        if (text.length() < LENGTH || !Character.isLetterOrDigit(text.charAt(2))) {
            return Optional.empty();
        }
        String identifier = text.substring(1, LENGTH);
        if (WITH_FNC1.contains(identifier)) {
            return Optional.of(GS1);
        }
        // interleaved two of five with a check digit holds a trade item number if it holds fourteen digits
        if (TRADE_ITEMS.contains(identifier) || identifier.equals("I1") && text.length() == LENGTH + 14) {
            return Optional.of(TRADE_ITEM);
        }
        char code = identifier.charAt(0);
        boolean modified = Character.isDigit(identifier.charAt(1));
        return modified && LINEAR_CODES.indexOf(code) >= 0
                ? Optional.of(LINEAR)
                : modified && OTHER_CODES.indexOf(code) >= 0 ? Optional.of(OTHER) : Optional.empty();
    }
}
