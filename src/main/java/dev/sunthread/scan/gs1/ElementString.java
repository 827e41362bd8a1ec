package dev.sunthread.scan.gs1;

import dev.sunthread.scan.meaning.Element;
import dev.sunthread.scan.meaning.Reading;
import dev.sunthread.scan.meaning.Remark;
import dev.sunthread.scan.meaning.Syntax;
import dev.sunthread.scan.meaning.Why;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads GS1 element strings: identifiers with their values, a separator behind those of variable length. */
public final class ElementString {

    /** FNC1 as it is transmitted behind a value, and at the beginning by some scanners. */
    public static final char SEPARATOR = '\u001d';

    private final String text;
    private final int year;
    private final List<Element> elements = new ArrayList<>();
    private final List<Remark> remarks = new ArrayList<>();
    private int at;

    private ElementString(String text, int year) {
        this.text = text;
        this.year = year;
    }

    /** Reads an element string, with or without a separator before it; what can't be read is left with its reason. */
    public static Reading read(String text, int year) {
        ElementString string = new ElementString(text, year);
        string.skipSeparators();
        while (string.at < text.length() && string.readElement()) {
            string.skipSeparators();
        }
        return string.reading();
    }

    private void skipSeparators() {
        while (at < text.length() && text.charAt(at) == SEPARATOR) {
            at++;
        }
    }

    private boolean readElement() {
        Optional<ApplicationIdentifier> identifier = SyntaxDictionary.beginning(text.substring(at, end(at, 4)));
        if (identifier.isEmpty()) {
            remarks.add(new Remark(Why.UNKNOWN_IDENTIFIER, text.substring(at, end(at, 2))));
            return false;
        }
        String code = identifier.get().code();
        int from = at + code.length();
        int to = identifier.get().predefined() ? end(from, identifier.get().length()) : nextSeparator(from);
        String value = text.substring(from, to);
        Optional<Why> problem = identifier.get().problem(value);
        if (problem.isPresent()) {
            remarks.add(new Remark(problem.get(), code));
            return false;
        }
        elements.add(Fields.element(code, value, year));
        at = to;
        return true;
    }

    private int end(int from, int length) {
        return Math.min(text.length(), from + length);
    }

    private int nextSeparator(int from) {
        int next = text.indexOf(SEPARATOR, from);
        return next < 0 ? text.length() : next;
    }

    private Reading reading() {
        if (text.isEmpty()) {
            remarks.add(Remark.of(Why.NOTHING_SCANNED));
        } else if (at == text.length() && elements.isEmpty()) {
            remarks.add(Remark.of(Why.EMPTY_VALUE));
        }
        remarks.addAll(repeated(elements));
        return new Reading(Syntax.GS1, elements, remarks, text.substring(at));
    }

    /** A remark for each identifier that is there more than once. */
    public static List<Remark> repeated(List<Element> elements) {
        Set<String> seen = new HashSet<>();
        return elements.stream()
                .map(Element::identifier)
                .filter(identifier -> !seen.add(identifier))
                .distinct()
                .map(identifier -> new Remark(Why.REPEATED, identifier))
                .toList();
    }

    /** The element of an identifier and its value, or what is wrong with it. */
    static Optional<Remark> check(String code, String value) {
        return SyntaxDictionary.find(code)
                .map(identifier -> identifier.problem(value))
                .orElse(Optional.of(Why.UNKNOWN_IDENTIFIER))
                .map(why -> new Remark(why, code));
    }

    /** Writes elements as an element string, with a separator before it and behind each value of variable length. */
    public static String write(List<Element> elements) {
        StringBuilder written = new StringBuilder().append(SEPARATOR);
        for (int i = 0; i < elements.size(); i++) {
            Element element = elements.get(i);
            written.append(element.identifier()).append(element.value());
            boolean predefined = SyntaxDictionary.find(element.identifier())
                    .map(ApplicationIdentifier::predefined)
                    .orElse(false);
            if (!predefined && i < elements.size() - 1) {
                written.append(SEPARATOR);
            }
        }
        return written.toString();
    }
}
