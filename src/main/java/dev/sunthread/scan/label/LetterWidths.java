package dev.sunthread.scan.label;

/**
 * How wide text is in a plain sans-serif font, as a part of its size; rather too wide. The classes of letters are by the
 * widths of the font that sheets are printed with; what draws a label on a page may take another one of the same kind.
 */
final class LetterWidths {

    private static final String NARROW = " .,:;!|'`ijl-()[]/\\fIt\u00b7\"";
    private static final String WIDE = "MWmw@%\u2026";

    private LetterWidths() {}

    static double of(String text) {
        return text.codePoints().mapToDouble(LetterWidths::of).sum();
    }

    private static double of(int letter) {
        if (NARROW.indexOf(letter) >= 0) {
            return 0.36;
        }
        if (WIDE.indexOf(letter) >= 0 || letter > 0x24f) {
            return 1.02;
        }
        return Character.isUpperCase(letter) || "&+<>=~#".indexOf(letter) >= 0 ? 0.79 : 0.6;
    }
}
