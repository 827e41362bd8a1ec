package dev.sunthread.scan.gs1;

import dev.sunthread.scan.meaning.Element;
import dev.sunthread.scan.meaning.Reading;
import dev.sunthread.scan.meaning.Remark;
import dev.sunthread.scan.meaning.Syntax;
import dev.sunthread.scan.meaning.Why;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds the ways to read an element string whose separators a scanner dropped; gives up early rather than late. */
public final class LostSeparators {

    private static final int MOST_READINGS = 8;
    private static final int MOST_STEPS = 20_000;

    private final String text;
    private final int year;
    private final List<Reading> found = new ArrayList<>();
    private int steps;

    private LostSeparators(String text, int year) {
        this.text = text;
        this.year = year;
    }

    /** Every way found to read the whole text, the one with the longest values first. */
    public static List<Reading> readings(String text, int year) {
        LostSeparators lost = new LostSeparators(text, year);
        lost.search(0, new ArrayList<>());
        return lost.found;
    }

    private void search(int from, List<Element> before) {
        if (found.size() >= MOST_READINGS || steps++ > MOST_STEPS) {
            return;
        }
        if (from == text.length()) {
            List<Remark> remarks = new ArrayList<>(List.of(Remark.of(Why.LOST_SEPARATORS)));
            remarks.addAll(ElementString.repeated(before));
            found.add(new Reading(Syntax.GS1, before, remarks, ""));
            return;
        }
        Optional<ApplicationIdentifier> identifier =
                SyntaxDictionary.beginning(text.substring(from, Math.min(text.length(), from + 4)));
        identifier.ifPresent(known -> searchBehind(known, from + known.code().length(), before));
    }

    private void searchBehind(ApplicationIdentifier identifier, int from, List<Element> before) {
        int separator = text.indexOf(ElementString.SEPARATOR, from);
        int end = separator < 0 ? text.length() : separator;
        int longest = Math.min(end, from + identifier.length());
        int shortest = identifier.predefined() ? from + identifier.length() : from + 1;
        for (int to = longest; to >= shortest; to--) {
            String value = text.substring(from, to);
            if (identifier.problem(value).isEmpty()) {
                List<Element> elements = new ArrayList<>(before);
                elements.add(Fields.element(identifier.code(), value, year));
                search(to == end && separator >= 0 ? to + 1 : to, elements);
            }
        }
    }
}
