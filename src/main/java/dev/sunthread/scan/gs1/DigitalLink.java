package dev.sunthread.scan.gs1;

import dev.sunthread.scan.meaning.Element;
import dev.sunthread.scan.meaning.Reading;
import dev.sunthread.scan.meaning.Remark;
import dev.sunthread.scan.meaning.Syntax;
import dev.sunthread.scan.meaning.Why;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads GS1 Digital Link addresses: a key and its qualifiers in the path, further identifiers in the query. */
public final class DigitalLink {

    private static final Pattern ADDRESS =
            Pattern.compile("(?:https?|HTTPS?)://[^/?#\\s]+((?:/[^?#]*)?)(?:\\?([^#]*))?(?:#.*)?");
    private static final Pattern ANY_CASE = Pattern.compile("(?i)https?://.*", Pattern.DOTALL);

    private final String address;
    private final int year;
    private final List<Element> elements = new ArrayList<>();
    private final List<Remark> problems = new ArrayList<>();

    private DigitalLink(String address, int year) {
        this.address = address;
        this.year = year;
    }

    /** Whether the text is a web address, of whatever kind. */
    public static boolean begins(String text) {
        return ANY_CASE.matcher(text).matches();
    }

    /** Reads a web address; one that is no Digital Link is left unread. */
    public static Reading read(String address, int year) {
        return new DigitalLink(address, year).read();
    }

    private Reading read() {
        Matcher parts = ADDRESS.matcher(address);
        if (!parts.matches()) {
            return Reading.unread(Syntax.DIGITAL_LINK, Why.NO_LINK, address);
        }
        readPath(parts.group(1).split("/", -1));
        if (problems.isEmpty() && parts.group(2) != null) {
            readQuery(parts.group(2));
        }
        if (problems.isEmpty()) {
            return new Reading(Syntax.DIGITAL_LINK, elements, ElementString.repeated(elements), "");
        }
        return new Reading(Syntax.DIGITAL_LINK, elements, problems, address);
    }

    private void readPath(String[] segments) {
        for (int i = segments.length - 2; i > 0; i -= 2) {
            Optional<ApplicationIdentifier> identifier = SyntaxDictionary.find(segments[i]);
            if (identifier.isEmpty()) {
                break;
            }
            if (identifier.get().qualifiers().isPresent()) {
                readKey(segments, i, identifier.get().qualifiers().get());
                return;
            }
        }
        problems.add(new Remark(Why.NO_LINK, address));
    }

    private void readKey(String[] segments, int key, List<List<String>> alternatives) {
        List<String> qualifiers = new ArrayList<>();
        for (int i = key; i < segments.length; i += 2) {
            if (i > key) {
                qualifiers.add(segments[i]);
            }
            add(segments[i], decoded(segments[i + 1], false));
        }
        boolean inOrder = qualifiers.isEmpty()
                || alternatives.stream().anyMatch(alternative -> isWithin(qualifiers, alternative));
        if (!inOrder) {
            problems.add(new Remark(Why.QUALIFIERS_OUT_OF_ORDER, String.join(", ", qualifiers)));
        }
    }

    private static boolean isWithin(List<String> qualifiers, List<String> order) {
        int last = -1;
        for (String qualifier : qualifiers) {
            int place = order.indexOf(qualifier);
            if (place <= last) {
                return false;
            }
            last = place;
        }
        return true;
    }

    private void readQuery(String query) {
        for (String part : query.split("[&;]")) {
            String[] pair = part.split("=", 2);
            if (pair[0].matches("\\d+")) {
                readAttribute(pair[0], pair.length == 2 ? decoded(pair[1], true) : "");
            }
        }
    }

    private void readAttribute(String code, String value) {
        boolean allowed =
                SyntaxDictionary.find(code).map(ApplicationIdentifier::inLink).orElse(false);
        if (allowed) {
            add(code, value);
        } else {
            problems.add(new Remark(Why.UNKNOWN_IDENTIFIER, code));
        }
    }

    private void add(String code, String value) {
        ElementString.check(code, value)
                .ifPresentOrElse(problems::add, () -> elements.add(Fields.element(code, value, year)));
    }

    /** Percent escapes of ASCII as what they stand for; in a path a plus is a plus, in a query it is a space. */
    private static String decoded(String text, boolean query) {
        StringBuilder decoded = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char character = text.charAt(i);
            int code = character == '%' && i + 2 < text.length() ? hex(text.substring(i + 1, i + 3)) : -1;
            if (code >= 0) {
                decoded.append((char) code);
                i += 2;
            } else {
                decoded.append(query && character == '+' ? ' ' : character);
            }
        }
        return decoded.toString();
    }

    private static int hex(String digits) {
        return digits.matches("[0-9A-Fa-f]{2}") ? Integer.parseInt(digits, 16) : -1;
    }
}
