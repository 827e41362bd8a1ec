package dev.sunthread.scan.message;

import dev.sunthread.scan.gs1.ElementString;
import dev.sunthread.scan.meaning.Reading;
import dev.sunthread.scan.meaning.Remark;
import dev.sunthread.scan.meaning.Syntax;
import dev.sunthread.scan.meaning.Why;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads messages of ISO/IEC 15434: a header, formats 05 (GS1) and 06 (data identifiers), an end. */
public final class Message {

    /** Ends a format. */
    public static final char RECORD = '\u001e';
    /** Ends a message. */
    public static final char END = '\u0004';

    private static final String HEADER = "[)>";
    private static final Pattern BEGINNING = Pattern.compile(".{0,3}?\\[\\)>.*", Pattern.DOTALL);
    private static final Pattern FORMAT = Pattern.compile("(\\d{2})(\\x1d?)(.*)", Pattern.DOTALL);
    /** What may be left of a header whose beginning is missing. */
    private static final Pattern CROPPED =
            Pattern.compile("(?:\\)?>)?\\x1e?(?:(0[56])\\x1d|\\x1d)?(.*)", Pattern.DOTALL);

    private Message() {}

    /** Whether the text has the header of a message, with at most three stray characters before it. */
    public static boolean begins(String text) {
        return BEGINNING.matcher(text).matches();
    }

    /** Reads a message with its header; several ways if its separators are lost. */
    public static List<Reading> read(String text, int year) {
        int header = text.indexOf(HEADER);
        String body = text.substring(header + HEADER.length());
        List<Remark> remarks = new ArrayList<>();
        if (header > 0) {
            remarks.add(Remark.of(Why.STRAY_CHARACTERS));
        }
        String content = withoutEnd(body.startsWith(String.valueOf(RECORD)) ? body.substring(1) : body, remarks);
        List<List<Reading>> formats = new ArrayList<>();
        for (String format : content.replaceFirst("\\x1e+$", "").split(String.valueOf(RECORD), -1)) {
            formats.add(format(format, year));
        }
        return combined(formats).stream()
                .map(reading -> reading.remarked(remarks))
                .toList();
    }

    private static String withoutEnd(String body, List<Remark> remarks) {
        String content = body.indexOf(END) < 0 ? body : body.substring(0, body.indexOf(END));
        if (content.length() == body.length() && !content.endsWith(String.valueOf(RECORD))) {
            remarks.add(Remark.of(Why.CROPPED_END));
        }
        return content;
    }

    private static List<Reading> format(String text, int year) {
        Matcher parts = FORMAT.matcher(text);
        if (!parts.matches()) {
            return List.of(Reading.unread(Syntax.DATA_IDENTIFIERS, Why.UNREAD_FORMAT, text));
        }
        String content = parts.group(3);
        boolean separated = !parts.group(2).isEmpty();
        return switch (parts.group(1)) {
            case "05" -> List.of(ElementString.read(content, year));
            case "06" -> dataFields(content, separated);
            default -> List.of(Reading.unread(Syntax.DATA_IDENTIFIERS, Why.UNREAD_FORMAT, parts.group(1)));
        };
    }

    private static List<Reading> dataFields(String content, boolean separated) {
        List<Reading> guesses = separated ? List.of() : DataFields.runTogether(content);
        return guesses.isEmpty() ? List.of(DataFields.read(fields(content))) : guesses;
    }

    private static List<String> fields(String content) {
        return Arrays.asList(content.split(String.valueOf(ElementString.SEPARATOR), -1));
    }

    /** Most messages have one format; what several say is put together, the first way of each further one taken. */
    private static List<Reading> combined(List<List<Reading>> formats) {
        List<Reading> combined = formats.get(0);
        for (List<Reading> further : formats.subList(1, formats.size())) {
            combined = combined.stream()
                    .map(reading -> together(reading, further.get(0)))
                    .toList();
        }
        return combined;
    }

    private static Reading together(Reading first, Reading second) {
        var elements = new ArrayList<>(first.elements());
        elements.addAll(second.elements());
        var remarks = new ArrayList<>(first.remarks());
        remarks.addAll(second.remarks());
        return new Reading(first.syntax(), elements, remarks, first.unread() + second.unread());
    }

    /** Reads fields of a message whose header is missing; empty if not every field has a known identifier. */
    public static Optional<Reading> headless(String text, int year) {
        List<Remark> remarks = new ArrayList<>(List.of(Remark.of(Why.CROPPED_HEADER)));
        String content = withoutEnd(text, remarks);
        Matcher parts = CROPPED.matcher(
                content.endsWith(String.valueOf(RECORD)) ? content.substring(0, content.length() - 1) : content);
        if (!parts.matches()) {
            return Optional.empty();
        }
        Reading reading = "05".equals(parts.group(1))
                ? ElementString.read(parts.group(2), year)
                : DataFields.read(fields(parts.group(2)));
        boolean known = reading.isWhole()
                && reading.remarks().stream().noneMatch(remark -> remark.why() == Why.UNKNOWN_IDENTIFIER);
        return known ? Optional.of(reading.remarked(remarks)) : Optional.empty();
    }
}
