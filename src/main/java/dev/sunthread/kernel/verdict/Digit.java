package dev.sunthread.kernel.verdict;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as people read them. */
public final class Digit {

    private static final MathContext SHOWN = new MathContext(5);

    private Digit() {}

    /** A number for a place of a phrase: its digits, or words if nothing bounds it. */
    public static Object said(double number) {
        if (Double.isInfinite(number)) {
            return Phrase.of(number > 0 ? "judged.no-bound" : "judged.below-bounds");
        }
        return plain(number);
    }

    /** A number, as it is said, with its unit; alone if it has none. */
    static Object with(Object number, String unit) {
        return unit.isEmpty() ? number : Phrase.of("judged.quantity", number, unit);
    }

    /** A number in plain notation with five significant digits at most. */
    public static String plain(double number) {
        if (Double.isInfinite(number)) {
            return String.valueOf(said(number));
        }
        BigDecimal shown = new BigDecimal(number).round(SHOWN).stripTrailingZeros();
        return shown.signum() != 0 && Math.abs(shown.doubleValue()) < 1e-4 ? shown.toString() : shown.toPlainString();
    }
}
