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

/** Reads EPC pure identity URIs, as readers of RFID tags send them, as the same identifiers of GS1. */
public final class EpcUri {

    private record Field(String code, String value) {}

    private static final Pattern URI =
            Pattern.compile("urn:epc:(?:id|class|idpat):([a-z]+):(\\d{6,12})\\.([^.]*)(?:\\.(.+))?");

    private final String scheme;
    private final String prefix;
    private final String reference;
    private final String rest;

    private EpcUri(Matcher parts) {
        this.scheme = parts.group(1);
        this.prefix = parts.group(2);
        this.reference = parts.group(3);
        this.rest = parts.group(4) == null ? "" : parts.group(4);
    }

    public static boolean begins(String text) {
        return text.startsWith("urn:epc:");
    }

    /** Reads a URI; one of a scheme that is not known here is left unread. */
    public static Reading read(String uri, int year) {
        Matcher parts = URI.matcher(uri);
        List<Field> fields = parts.matches() ? new EpcUri(parts).fields() : List.of();
        if (fields.isEmpty()) {
            return Reading.unread(Syntax.EPC, Why.NO_LINK, uri);
        }
        List<Element> elements = new ArrayList<>();
        for (Field field : fields) {
            Optional<Remark> problem = ElementString.check(field.code(), field.value());
            if (problem.isPresent()) {
                return new Reading(Syntax.EPC, elements, List.of(problem.get()), uri);
            }
            elements.add(Fields.element(field.code(), field.value(), year));
        }
        return new Reading(Syntax.EPC, elements, List.of(), "");
    }

    private List<Field> fields() {
        return switch (scheme) {
            case "sgtin" -> with(key("01", 13, true), "21");
            case "lgtin" -> with(key("01", 13, true), "10");
            case "sscc" -> key("00", 17, true);
            case "sgln" -> with(key("414", 12, false), "254");
            case "pgln" -> key("417", 12, false);
            case "gdti" ->
                key("253", 12, false).stream()
                        .map(document -> new Field(document.code(), document.value() + rest))
                        .toList();
            case "giai" -> List.of(new Field("8004", prefix + reference));
            default -> List.of();
        };
    }

    /** The key with its check digit; the reference's first digit stands before the prefix where it is an indicator. */
    private List<Field> key(String code, int length, boolean indicated) {
        if (!reference.matches(indicated ? "\\d+" : "\\d*") || prefix.length() + reference.length() != length) {
            return List.of();
        }
        String digits = indicated ? reference.charAt(0) + prefix + reference.substring(1) : prefix + reference;
        return List.of(new Field(code, digits + CheckDigit.of(digits)));
    }

    /** The key with what is behind it: a star stands for any, and an extension of nought says that there is none. */
    private List<Field> with(List<Field> key, String code) {
        boolean none = rest.isEmpty() || rest.equals("*") || code.equals("254") && rest.equals("0");
        return key.isEmpty() || none ? key : List.of(key.get(0), new Field(code, rest));
    }
}
