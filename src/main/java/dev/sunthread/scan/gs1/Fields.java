package dev.sunthread.scan.gs1;

import dev.sunthread.scan.meaning.Amount;
import dev.sunthread.scan.meaning.Element;
import dev.sunthread.scan.meaning.Meaning;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What the application identifiers say in words of the plant. */
final class Fields {

    private static final Map<String, Meaning> MEANINGS = Map.ofEntries(
            Map.entry("00", Meaning.PACKAGE),
            Map.entry("01", Meaning.TRADE_ITEM),
            Map.entry("02", Meaning.TRADE_ITEM),
            Map.entry("03", Meaning.TRADE_ITEM),
            Map.entry("10", Meaning.SUPPLIER_LOT),
            Map.entry("11", Meaning.PRODUCED),
            Map.entry("17", Meaning.EXPIRY),
            Map.entry("7003", Meaning.EXPIRY),
            Map.entry("21", Meaning.SERIAL),
            Map.entry("30", Meaning.QUANTITY),
            Map.entry("37", Meaning.QUANTITY),
            Map.entry("240", Meaning.SUPPLIER_ITEM),
            Map.entry("241", Meaning.ITEM),
            Map.entry("400", Meaning.ORDER),
            Map.entry("422", Meaning.ORIGIN));

    private static final Set<String> COUNTS = Set.of("30", "37");
    private static final Set<String> DAYS = Set.of("11", "12", "13", "15", "16", "17", "7003", "7006");
    /** Net weight and net volume; the fourth digit says how many decimals the value has. */
    private static final Map<String, String> MEASURES = Map.of("310", "KGM", "315", "LTR", "320", "LBR");

    private Fields() {}

    /** The element of a value that was found right. */
    static Element element(String code, String value, int year) {
        Amount amount = amount(code, value);
        Meaning meaning = amount == null ? MEANINGS.getOrDefault(code, Meaning.OTHER) : Meaning.QUANTITY;
        return new Element(code, meaning, value, day(code, value, year), amount);
    }

    private static @Nullable LocalDate day(String code, String value, int year) {
        return DAYS.contains(code) ? Days.ofSix(value.substring(0, 6), year).orElse(null) : null;
    }

    private static @Nullable Amount amount(String code, String value) {
        if (COUNTS.contains(code)) {
            return new Amount(new BigDecimal(value), null);
        }
        String unit = code.length() == 4 ? MEASURES.get(code.substring(0, 3)) : null;
        return unit == null ? null : new Amount(new BigDecimal(value).movePointLeft(code.charAt(3) - '0'), unit);
    }
}
