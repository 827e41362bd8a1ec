package dev.sunthread.kernel.verdict;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as people read them. */
public final class Digit {

    private static final MathContext SHOWN = new MathContext(5);

    private Digit() {}

    /** A number in plain notation with five significant digits at most. */
    public static String plain(double number) {
        if (Double.isInfinite(number)) {
            return number > 0 ? "no known bound" : "below every bound";
        }
        BigDecimal shown = new BigDecimal(number).round(SHOWN).stripTrailingZeros();
        return shown.signum() != 0 && Math.abs(shown.doubleValue()) < 1e-4 ? shown.toString() : shown.toPlainString();
    }
}
