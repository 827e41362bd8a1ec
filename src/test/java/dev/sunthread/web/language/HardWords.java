package dev.sunthread.web.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds words that stand in a template itself and so can be read in one language only. */
final class HardWords {

    /** A comment, a tag with its attributes, or the text between tags. */
    private static final Pattern PIECE = Pattern.compile(
            "<!--.*?-->|<!DOCTYPE[^>]*>|<(/?)(\\w[\\w:]*)((?:\"[^\"]*\"|[^>\"])*)>|([^<]+)", Pattern.DOTALL);

    private static final Pattern READ = Pattern.compile(
            "(?<![\\w:-])(th:attr=\"[^\"]*(?=aria-label)|th:|)(?:text|aria-label|placeholder|title|alt)=\"?([^\"]*)\"");
    private static final Pattern INLINE = Pattern.compile("\\[\\[(.*?)]]", Pattern.DOTALL);
    /** A literal that is shown, not one that something is compared with. */
    private static final Pattern SHOWN = Pattern.compile("(?:^|[?:+])\\s*'([^']*)'|\\|([^|]*)\\|");
    /** A word, and neither the name of the application nor a part of a worked example of a time. */
    private static final Pattern WORD = Pattern.compile("(?<![\\d\\p{L}-])(?!Sunthread\\b)\\p{L}+");

    /** What stands in these is typed or pressed as it is, in every language. */
    private static final Set<String> CODE = Set.of("code", "pre", "kbd");

    private HardWords() {}

    static List<String> in(String template) {
        List<String> words = new ArrayList<>();
        int code = 0;
        Matcher pieces = PIECE.matcher(template);
        while (pieces.find()) {
            String tag = pieces.group(2);
            String text = pieces.group(4);
            if (tag != null) {
                code += CODE.contains(tag) ? (pieces.group(1).isEmpty() ? 1 : -1) : 0;
                READ.matcher(pieces.group(3))
                        .results()
                        .filter(HardWords::isWorded)
                        .forEach(attribute -> words.add(attribute.group()));
            } else if (text != null && code == 0 && isWorded(text)) {
                words.add(text.strip());
            }
        }
        return words;
    }

    private static boolean isWorded(MatchResult attribute) {
        String value = attribute.group(2);
        return attribute.group(1).isEmpty() ? WORD.matcher(value).find() : showsWords(value);
    }

    private static boolean isWorded(String text) {
        return WORD.matcher(INLINE.matcher(text).replaceAll("")).find()
                || INLINE.matcher(text).results().anyMatch(inline -> showsWords(inline.group(1)));
    }

    private static boolean showsWords(String expression) {
        return SHOWN.matcher(without("#{", expression))
                .results()
                .map(shown -> shown.group(1) == null ? without("${", shown.group(2)) : shown.group(1))
                .anyMatch(literal -> WORD.matcher(literal).find());
    }

    /** The text without the expressions that begin so, each with all that is between its braces. */
    private static String without(String begin, String text) {
        int from = text.indexOf(begin);
        if (from < 0) {
            return text;
        }
        int open = 0;
        int to = from;
        do {
            open += text.charAt(to) == '{' ? 1 : text.charAt(to) == '}' ? -1 : 0;
            to++;
        } while (to < text.length() && (open > 0 || to < from + begin.length()));
        return text.substring(0, from) + without(begin, text.substring(to));
    }
}
