package dev.sunthread.scan.message;

import dev.sunthread.scan.gs1.ElementString;
import dev.sunthread.scan.meaning.Element;
import dev.sunthread.scan.meaning.Meaning;
import dev.sunthread.scan.meaning.Reading;
import dev.sunthread.scan.meaning.Remark;
import dev.sunthread.scan.meaning.Syntax;
import dev.sunthread.scan.meaning.Why;
import dev.sunthread.scan.message.DataIdentifiers.Field;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads fields with data identifiers: apart from each other, alone, or run together. */
public final class DataFields {

    private static final int MOST_READINGS = 12;
    private static final int MOST_STEPS = 20_000;

    private final List<Element> elements = new ArrayList<>();
    private final List<Remark> remarks = new ArrayList<>();
    private String unread = "";

    private DataFields() {}

    /** Reads the fields of a format 06, apart from each other. */
    static Reading read(List<String> texts) {
        DataFields fields = new DataFields();
        for (int i = 0; i < texts.size(); i++) {
            if (!texts.get(i).isEmpty() || i < texts.size() - 1) {
                fields.add(texts.get(i));
            }
        }
        fields.remarks.addAll(ElementString.repeated(fields.elements));
        return new Reading(Syntax.DATA_IDENTIFIERS, fields.elements, fields.remarks, fields.unread);
    }

    private void add(String text) {
        Optional<Field> field = DataIdentifiers.field(text);
        if (text.isEmpty()) {
            remarks.add(Remark.of(Why.EMPTY_FIELD));
        } else if (field.isPresent()) {
            add(field.get());
        } else if (elements.isEmpty()) {
            remarks.add(new Remark(Why.UNKNOWN_IDENTIFIER, text));
            unread = text;
        } else {
            goOn(text);
        }
    }

    private void add(Field field) {
        Element element = field.element();
        elements.add(element);
        if (!field.isKnown()) {
            remarks.add(new Remark(Why.UNKNOWN_IDENTIFIER, field.identifier()));
        } else if (field.value().isEmpty()) {
            remarks.add(new Remark(Why.EMPTY_FIELD, field.identifier()));
        } else if (element.meaning() == Meaning.EXPIRY && element.date() == null) {
            remarks.add(new Remark(Why.WRONG_DATE, field.identifier()));
        } else if (element.meaning() == Meaning.QUANTITY && element.amount() == null) {
            remarks.add(new Remark(Why.WRONG_CHARACTER, field.identifier()));
        }
    }

    /** What does not begin as an identifier does belongs to the value before it. */
    private void goOn(String text) {
        Element last = elements.remove(elements.size() - 1);
        add(new Field(last.identifier(), last.value() + ElementString.SEPARATOR + text));
        remarks.add(new Remark(Why.SEPARATOR_IN_VALUE, last.identifier()));
    }

    /** The text as one field of a known identifier, as labels with a code for each field have it. */
    public static Optional<Reading> alone(String text) {
        return DataIdentifiers.field(text)
                .filter(Field::isLikely)
                .map(field -> Reading.of(Syntax.DATA_IDENTIFIERS, field.element()));
    }

    /** The ways to read fields whose separators are lost, those with most fields first. */
    static List<Reading> runTogether(String text) {
        List<List<Element>> found = new ArrayList<>();
        split(text, List.of(), found, new int[] {MOST_STEPS});
        return found.stream()
                .limit(MOST_READINGS)
                .map(elements ->
                        new Reading(Syntax.DATA_IDENTIFIERS, elements, List.of(Remark.of(Why.LOST_SEPARATORS)), ""))
                .toList();
    }

    private static void split(String text, List<Element> before, List<List<Element>> found, int[] steps) {
        Optional<Field> field = DataIdentifiers.field(text).filter(Field::isKnown);
        if (field.isEmpty() || found.size() >= MOST_READINGS) {
            return;
        }
        String identifier = field.get().identifier();
        boolean another =
                before.stream().noneMatch(element -> element.identifier().equals(identifier));
        for (int to = identifier.length() + 1; (another || identifier.equals("1T")) && to <= text.length(); to++) {
            Field part = new Field(identifier, text.substring(identifier.length(), to));
            if (steps[0]-- < 0) {
                return;
            }
            if (part.isLikely()) {
                List<Element> elements = new ArrayList<>(before);
                elements.add(part.element());
                if (to == text.length()) {
                    found.add(elements);
                } else {
                    split(text.substring(to), elements, found, steps);
                }
            }
        }
    }
}
