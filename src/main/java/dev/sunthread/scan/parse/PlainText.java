package dev.sunthread.scan.parse;

import dev.sunthread.scan.gs1.ElementString;
import dev.sunthread.scan.gs1.LostSeparators;
import dev.sunthread.scan.meaning.Element;
import dev.sunthread.scan.meaning.Meaning;
import dev.sunthread.scan.meaning.Reading;
import dev.sunthread.scan.meaning.Syntax;
import dev.sunthread.scan.meaning.Why;
import dev.sunthread.scan.message.DataFields;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Reads texts without any mark of structure. */
final class PlainText {

    private static final Pattern TRADE_ITEM = Pattern.compile("\\d{8}|\\d{12,14}");
    private static final Pattern KEY_FIRST = Pattern.compile("(?:00|01|02)\\d{14}.*");
    private static final Pattern DIGITS_FIRST = Pattern.compile("\\d.*");

    private final List<ItemPattern> patterns;
    private final int year;

    PlainText(List<ItemPattern> patterns, int year) {
        this.patterns = List.copyOf(patterns);
        this.year = year;
    }

    /** A trade item number of 8, 12, 13 or 14 digits, as codes for it hold it. */
    Reading tradeItem(String digits) {
        return TRADE_ITEM.matcher(digits).matches()
                ? ElementString.read("01" + "0".repeat(14 - digits.length()) + digits, year)
                : Reading.unread(Syntax.GS1, Why.WRONG_LENGTH, digits);
    }

    /**
     * Whatever the text may be: the serial of items whose pattern it has, or else a bare name; and structured text that
     * nothing marks as such.
     *
     * @param linear whether it comes from a linear code, which often holds one field with its data identifier
     */
    List<Reading> readings(String text, boolean linear) {
        if (text.chars().anyMatch(Character::isISOControl)) {
            return List.of(Reading.unread(Syntax.PLAIN, Why.CONTROL_CHARACTERS, text));
        }
        List<Reading> readings = new ArrayList<>(serials(text));
        if (readings.isEmpty()) {
            readings.add(Reading.of(Syntax.PLAIN, Element.of("", Meaning.NAME, text)));
        }
        if (KEY_FIRST.matcher(text).matches()) {
            LostSeparators.readings(text, year).forEach(guess -> readings.add(guess.remarked(Why.GUESSED_SYNTAX)));
        }
        if (linear || DIGITS_FIRST.matcher(text).matches()) {
            DataFields.alone(text).ifPresent(field -> readings.add(field.remarked(Why.GUESSED_SYNTAX)));
        }
        return readings;
    }

    private List<Reading> serials(String text) {
        return patterns.stream()
                .filter(item -> item.pattern().matches(text))
                .map(item -> Reading.of(
                        Syntax.PLAIN, Element.of("", Meaning.ITEM, item.item()), Element.of("", Meaning.SERIAL, text)))
                .toList();
    }
}
