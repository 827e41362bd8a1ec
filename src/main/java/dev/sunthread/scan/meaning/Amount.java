package dev.sunthread.scan.meaning;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A quantity on a label.
 *
 * @param unit the unit's code as printed or as its identifier means it, such as {@code KGM}; absent for a bare count
 */
public record Amount(BigDecimal number, @Nullable String unit) {}
