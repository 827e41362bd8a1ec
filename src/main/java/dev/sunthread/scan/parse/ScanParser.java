package dev.sunthread.scan.parse;

import dev.sunthread.scan.gs1.BracketedText;
import dev.sunthread.scan.gs1.DigitalLink;
import dev.sunthread.scan.gs1.ElementString;
import dev.sunthread.scan.gs1.EpcUri;
import dev.sunthread.scan.gs1.LostSeparators;
import dev.sunthread.scan.meaning.Reading;
import dev.sunthread.scan.meaning.Scanned;
import dev.sunthread.scan.meaning.Syntax;
import dev.sunthread.scan.meaning.Why;
import dev.sunthread.scan.message.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Says what scanned texts may mean; reads any text whatever, and always comes to an end. */
public final class ScanParser {

    /** A QR code of the largest size holds 7089 digits. */
    private static final int LONGEST = 7089;

    private static final Pattern AROUND = Pattern.compile("^[ \\t\\r\\n]+|[ \\t\\r\\n]+$");

    private final PlainText plain;
    private final int year;

    /**
     * A parser.
     *
     * @param patterns what the serials of items look like
     * @param year the current year, for dates with two digits of it
     */
    public ScanParser(List<ItemPattern> patterns, int year) {
        this.plain = new PlainText(patterns, year);
        this.year = year;
    }

    /** All that the text may mean. */
    public Scanned read(String scanned) {
        String text = Separators.ofPictures(AROUND.matcher(scanned).replaceAll(""));
        List<Reading> readings = text.isEmpty()
                ? List.of(Reading.unread(Syntax.PLAIN, Why.NOTHING_SCANNED, ""))
                : text.length() > LONGEST ? List.of(Reading.unread(Syntax.PLAIN, Why.TOO_LONG, text)) : readings(text);
        return new Scanned(text, readings.stream().map(ScanParser::withAReason).toList());
    }

    // a frame with nothing in it
    private static Reading withAReason(Reading reading) {
        boolean saysNothing = reading.elements().isEmpty()
                && reading.remarks().isEmpty()
                && reading.unread().isEmpty();
        return saysNothing ? reading.remarked(Why.EMPTY_VALUE) : reading;
    }

    private List<Reading> readings(String text) {
        if (!Symbology.begins(text)) {
            return content(text, false);
        }
        return Symbology.of(text)
                .map(symbology -> text.length() == Symbology.LENGTH
                        ? List.of(Reading.unread(Syntax.PLAIN, Why.NOTHING_AFTER_SYMBOLOGY, text))
                        : under(symbology, text.substring(Symbology.LENGTH)))
                .orElseGet(() -> List.of(Reading.unread(Syntax.PLAIN, Why.UNKNOWN_SYMBOLOGY, text)));
    }

    private List<Reading> under(Symbology symbology, String content) {
        return switch (symbology) {
            case GS1 -> elementString(content);
            case TRADE_ITEM -> List.of(plain.tradeItem(content));
            case LINEAR -> content(content, true);
            case OTHER -> content(content, false);
        };
    }

    private List<Reading> elementString(String content) {
        String separated = Separators.ofNames(content);
        Reading reading = ElementString.read(separated, year);
        List<Reading> readings = reading.isWhole() ? List.of(reading) : orGuessed(separated, reading);
        return separated.equals(content) ? readings : remarked(readings, Why.SEPARATORS_AS_TEXT);
    }

    /** Where the separators may be lost, all the ways to put them; the reading as it is if there is none. */
    private List<Reading> orGuessed(String text, Reading reading) {
        List<Reading> guesses = LostSeparators.readings(text.replaceFirst("^\\x1d+", ""), year);
        return guesses.isEmpty() ? List.of(reading) : guesses;
    }

    private List<Reading> content(String text, boolean linear) {
        if (DigitalLink.begins(text)) {
            return List.of(DigitalLink.read(text, year));
        }
        if (EpcUri.begins(text)) {
            return List.of(EpcUri.read(text, year));
        }
        if (BracketedText.begins(text)) {
            return List.of(BracketedText.read(text, year));
        }
        String separated = Separators.ofNames(text);
        List<Reading> structured = structured(separated);
        if (structured.isEmpty()) {
            return plain.readings(text, linear);
        }
        return separated.equals(text) ? structured : withPlain(text, structured);
    }

    /** Names of separators in a text may be part of a plain name: both is offered. */
    private List<Reading> withPlain(String text, List<Reading> structured) {
        List<Reading> readings = new ArrayList<>(remarked(structured, Why.SEPARATORS_AS_TEXT));
        if (structured.stream().noneMatch(Reading::isWhole)) {
            readings.addAll(plain.readings(text, false));
        }
        return readings;
    }

    private List<Reading> structured(String text) {
        if (Message.begins(text)) {
            return Message.read(text, year);
        }
        if (text.matches("(?s)\\^\\d.*")) {
            // the way the standard's own examples write FNC1
            return elementString(text.replace('^', ElementString.SEPARATOR));
        }
        return text.indexOf(ElementString.SEPARATOR) < 0 && text.indexOf(Message.RECORD) < 0
                ? List.of()
                : separated(text);
    }

    /** A text with separators and no header: an element string, or what is left of a message, or both. */
    private List<Reading> separated(String text) {
        List<Reading> whole = new ArrayList<>();
        Reading elements = ElementString.read(text, year);
        if (elements.isWhole()) {
            whole.add(text.charAt(0) == ElementString.SEPARATOR ? elements : elements.remarked(Why.GUESSED_SYNTAX));
        }
        Message.headless(text, year).ifPresent(whole::add);
        return whole.isEmpty() ? orGuessed(text, elements) : whole;
    }

    private static List<Reading> remarked(List<Reading> readings, Why why) {
        return readings.stream().map(reading -> reading.remarked(why)).toList();
    }
}
