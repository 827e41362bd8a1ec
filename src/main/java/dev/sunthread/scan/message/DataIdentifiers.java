package dev.sunthread.scan.message;

import dev.sunthread.scan.gs1.Days;
import dev.sunthread.scan.meaning.Amount;
import dev.sunthread.scan.meaning.Element;
import dev.sunthread.scan.meaning.Meaning;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The data identifiers that are known here, and what they say in words of the plant. */
final class DataIdentifiers {

    /** Up to three digits and a letter: an identifier is all of them, whatever else its end may be. */
    private static final Pattern FORM = Pattern.compile("(\\d{0,3}[A-Z])(.*)", Pattern.DOTALL);

    private static final Pattern QUANTITY = Pattern.compile("(\\d{1,15}(?:\\.\\d{1,9})?)([A-Z0-9]{2})?");
    private static final Set<String> DAYS = Set.of("14D", "16D");

    private static final Map<String, Meaning> MEANINGS = Map.ofEntries(
            Map.entry("P", Meaning.ITEM),
            Map.entry("1P", Meaning.SUPPLIER_ITEM),
            Map.entry("30P", Meaning.SUPPLIER_ITEM),
            Map.entry("33P", Meaning.OTHER),
            Map.entry("2P", Meaning.REVISION),
            Map.entry("Q", Meaning.QUANTITY),
            Map.entry("7Q", Meaning.QUANTITY),
            Map.entry("13Q", Meaning.OTHER),
            Map.entry("S", Meaning.SERIAL),
            Map.entry("T", Meaning.LOT),
            Map.entry("1T", Meaning.SUPPLIER_LOT),
            Map.entry("3S", Meaning.CONTAINER),
            Map.entry("4S", Meaning.PACKAGE),
            Map.entry("5S", Meaning.PACKAGE),
            Map.entry("25S", Meaning.OTHER),
            Map.entry("9D", Meaning.OTHER),
            Map.entry("10D", Meaning.OTHER),
            Map.entry("6D", Meaning.OTHER),
            Map.entry("14D", Meaning.EXPIRY),
            Map.entry("16D", Meaning.PRODUCED),
            Map.entry("K", Meaning.ORDER),
            Map.entry("4K", Meaning.OTHER),
            Map.entry("14K", Meaning.OTHER),
            Map.entry("11K", Meaning.DELIVERY),
            Map.entry("V", Meaning.SUPPLIER),
            Map.entry("1V", Meaning.SUPPLIER),
            Map.entry("12V", Meaning.SUPPLIER),
            Map.entry("17V", Meaning.SUPPLIER),
            Map.entry("18V", Meaning.SUPPLIER),
            Map.entry("4L", Meaning.ORIGIN),
            Map.entry("E", Meaning.OTHER),
            // the plant's own labels, see scanning.md
            Map.entry("1B", Meaning.CARRIER),
            Map.entry("20L", Meaning.STATION),
            Map.entry("21L", Meaning.POSITION),
            Map.entry("1H", Meaning.BADGE),
            Map.entry("Z", Meaning.COMMAND));

    /** An identifier with what stands behind it, as text. */
    record Field(String identifier, String value) {

        boolean isKnown() {
            return MEANINGS.containsKey(identifier);
        }

        /** Whether the value is one that its identifier can have; for guesses only, a printed field is kept anyhow. */
        boolean isLikely() {
            return isKnown()
                    && !value.isEmpty()
                    && (MEANINGS.get(identifier) != Meaning.QUANTITY || amount() != null)
                    && (!DAYS.contains(identifier) || day() != null)
                    && (!identifier.equals("4L") || value.matches("[A-Z]{2}"));
        }

        Element element() {
            return new Element(identifier, MEANINGS.getOrDefault(identifier, Meaning.OTHER), value, day(), amount());
        }

        private @Nullable LocalDate day() {
            return DAYS.contains(identifier) && value.matches("\\d{8}")
                    ? Days.ofEight(value).orElse(null)
                    : null;
        }

        private @Nullable Amount amount() {
            Matcher parts = QUANTITY.matcher(value);
            if (MEANINGS.get(identifier) != Meaning.QUANTITY || !parts.matches()) {
                return null;
            }
            return identifier.equals("7Q") || parts.group(2) == null
                    ? new Amount(new BigDecimal(parts.group(1)), parts.group(2))
                    : null;
        }
    }

    private DataIdentifiers() {}

    /** The text as identifier and value; empty if it does not begin as identifiers do. */
    static Optional<Field> field(String text) {
        Matcher parts = FORM.matcher(text);
        return parts.matches() ? Optional.of(new Field(parts.group(1), parts.group(2))) : Optional.empty();
    }
}
