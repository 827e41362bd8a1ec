package dev.sunthread.web.receipt;

import dev.sunthread.scan.meaning.Amount;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Quantities of labels in the units of items, where both measure the same. */
final class Measures {

    private record Measure(String of, BigDecimal inBase) {}

    /** By the codes of UN/CEFACT recommendation 20 and of ANSI X12 that labels have, and as items are stated in. */
    private static final Map<String, Measure> UNITS = Map.ofEntries(
            Map.entry("G", new Measure("mass", BigDecimal.ONE)),
            Map.entry("GRM", new Measure("mass", BigDecimal.ONE)),
            Map.entry("GR", new Measure("mass", BigDecimal.ONE)),
            Map.entry("KG", new Measure("mass", new BigDecimal(1000))),
            Map.entry("KGM", new Measure("mass", new BigDecimal(1000))),
            Map.entry("ML", new Measure("volume", BigDecimal.ONE)),
            Map.entry("MLT", new Measure("volume", BigDecimal.ONE)),
            Map.entry("L", new Measure("volume", new BigDecimal(1000))),
            Map.entry("LT", new Measure("volume", new BigDecimal(1000))),
            Map.entry("LTR", new Measure("volume", new BigDecimal(1000))),
            Map.entry("PCS", new Measure("count", BigDecimal.ONE)),
            Map.entry("PC", new Measure("count", BigDecimal.ONE)),
            Map.entry("PCE", new Measure("count", BigDecimal.ONE)),
            Map.entry("EA", new Measure("count", BigDecimal.ONE)));

    private Measures() {}

    /** The number in the item's unit; empty if the label's unit measures something else or is not known. */
    static Optional<String> in(String itemUnit, Amount amount) {
        Measure to = UNITS.get(itemUnit.toUpperCase(Locale.ROOT));
        Measure from = UNITS.get(unit(amount.unit()));
        if (from == null || to == null || !from.of().equals(to.of())) {
            return Optional.empty();
        }
        BigDecimal number = amount.number().multiply(from.inBase());
        BigDecimal converted = to.inBase().equals(BigDecimal.ONE) ? number : number.movePointLeft(3);
        return Optional.of(converted.stripTrailingZeros().toPlainString());
    }

    /** A number without a unit is a count, which says nothing of an item that is weighed. */
    private static String unit(@Nullable String given) {
        return given == null ? "PCS" : given.toUpperCase(Locale.ROOT);
    }
}
