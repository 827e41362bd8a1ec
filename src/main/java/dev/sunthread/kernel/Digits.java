package dev.sunthread.kernel;

import java.math.BigDecimal;
import java.util.List;

/** Decimals as text with all their digits, for arrays that the database casts to {@code numeric[]}. */
public final class Digits {

    private Digits() {}

    /** Each number in plain notation, in their order. */
    public static String[] of(List<BigDecimal> numbers) {
        return numbers.stream().map(BigDecimal::toPlainString).toArray(String[]::new);
    }
}
