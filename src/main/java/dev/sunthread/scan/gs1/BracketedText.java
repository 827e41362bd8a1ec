package dev.sunthread.scan.gs1;

import dev.sunthread.scan.meaning.Element;
import dev.sunthread.scan.meaning.Reading;
import dev.sunthread.scan.meaning.Remark;
import dev.sunthread.scan.meaning.Syntax;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the line for people below a GS1 code, typed as it stands: identifiers in brackets. */
public final class BracketedText {

    private static final Pattern IDENTIFIER = Pattern.compile("\\((\\d{2,4})\\)");

    private BracketedText() {}

    public static boolean begins(String text) {
        return IDENTIFIER.matcher(text).lookingAt();
    }

    /** Reads a text that begins with an identifier in brackets. */
    public static Reading read(String text, int year) {
        List<Element> elements = new ArrayList<>();
        Matcher identifier = IDENTIFIER.matcher(text);
        boolean more = identifier.find();
        while (more) {
            int start = identifier.start();
            String code = identifier.group(1);
            int from = identifier.end();
            more = identifier.find();
            String value = text.substring(from, more ? identifier.start() : text.length());
            Optional<Remark> problem = ElementString.check(code, value);
            if (problem.isPresent()) {
                return new Reading(Syntax.GS1, elements, List.of(problem.get()), text.substring(start));
            }
            elements.add(Fields.element(code, value, year));
        }
        return new Reading(Syntax.GS1, elements, ElementString.repeated(elements), "");
    }
}
