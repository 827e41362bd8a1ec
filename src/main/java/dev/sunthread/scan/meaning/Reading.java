package dev.sunthread.scan.meaning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One way to read a scanned text.
 *
 * @param elements the fields in their order; an identifier may repeat
 * @param unread what could not be read; the remarks say why
 */
public record Reading(Syntax syntax, List<Element> elements, List<Remark> remarks, String unread) {

    public Reading {
        elements = List.copyOf(elements);
        remarks = List.copyOf(remarks);
    }

    public static Reading of(Syntax syntax, Element... elements) {
        return new Reading(syntax, List.of(elements), List.of(), "");
    }

    /** A text that could not be read at all. */
    public static Reading unread(Syntax syntax, Why why, String text) {
        return new Reading(syntax, List.of(), List.of(new Remark(why, text)), text);
    }

    public Thing thing() {
        return Thing.of(elements);
    }

    /** Whether everything was read. */
    public boolean isWhole() {
        return unread.isEmpty() && !elements.isEmpty();
    }

    /** Whether everything was read and nothing is in doubt. */
    public boolean isSure() {
        return isWhole() && remarks.stream().noneMatch(remark -> remark.why().isDoubt());
    }

    /** The first value that says this. */
    public Optional<String> value(Meaning meaning) {
        return values(meaning).stream().findFirst();
    }

    /** Every value that says this, in order; repeated identifiers give several. */
    public List<String> values(Meaning meaning) {
        return all(meaning).stream().map(Element::value).toList();
    }

    public List<Element> all(Meaning meaning) {
        return elements.stream().filter(element -> element.meaning() == meaning).toList();
    }

    /** The same with further remarks. */
    public Reading remarked(List<Remark> more) {
        List<Remark> all = new ArrayList<>(more);
        all.addAll(remarks);
        return new Reading(syntax, elements, all.stream().distinct().toList(), unread);
    }

    public Reading remarked(Why why) {
        return remarked(List.of(Remark.of(why)));
    }
}
