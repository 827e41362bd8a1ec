package dev.sunthread.scan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Ways in which one label is easily taken for another. Any number of them may come together; {@code scan.skeleton} in
 * the database forgets them all, and has an index on every label there is.
 */
public enum Likeness {
    CASE("case", text -> text.toUpperCase(Locale.ROOT)),
    NOUGHT_AND_O("0 and O", text -> text.replace('O', '0').replace('o', '0')),
    ONE_AND_LETTERS("1, I and l", text -> text.replaceAll("[IiLl]", "1")),
    LEADING_NOUGHTS("leading noughts", text -> text.replaceAll("(?<![0-9])0+(?=[0-9])", "")),
    MARKS("marks between its parts", text -> text.replaceAll("[-_ ./:,;+#*]+", ""));

    private static final Pattern INNER_NOUGHTS = Pattern.compile("(?<=[1-9])0+(?=[1-9])");
    private static final Pattern MARK = Pattern.compile("[-_ ./:,;+#*]");

    private final String words;
    private final UnaryOperator<String> forget;

    Likeness(String words, UnaryOperator<String> forget) {
        this.words = words;
        this.forget = forget;
    }

    public String words() {
        return words;
    }

    /** The condition that a column is spelled nearly as one of the named parameter {@code texts}. */
    public static String condition(String column) {
        return "scan.skeleton(" + column + ") = ANY (ARRAY(SELECT scan.skeleton(t) FROM unnest(:texts) t))";
    }

    /**
     * The texts to look for by {@link #condition}: the text itself, and, if it has no mark between its parts, the text
     * with noughts left out that may have led a part.
     */
    public static List<String> spellings(String text) {
        Set<String> spellings = new LinkedHashSet<>(List.of(text));
        if (!MARK.matcher(text).find()) {
            Matcher noughts = INNER_NOUGHTS.matcher(text);
            while (noughts.find()) {
                spellings.add(text.substring(0, noughts.start()) + text.substring(noughts.end()));
            }
        }
        return List.copyOf(spellings);
    }

    /** In what two labels that are nearly spelled alike differ, in the order of these ways. */
    public static List<Likeness> between(String one, String other) {
        List<Likeness> differences = new ArrayList<>();
        for (Likeness likeness : values()) {
            if (!withoutAllBut(likeness, one).equals(withoutAllBut(likeness, other))) {
                differences.add(likeness);
            }
        }
        return differences;
    }

    private static String withoutAllBut(Likeness kept, String text) {
        String left = text;
        for (Likeness likeness : values()) {
            left = likeness == kept ? left : likeness.forget.apply(left);
        }
        return left;
    }
}
