package dev.sunthread.scan.parse;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Separators as control characters, as the pictures that pages show them as, and as other texts that scanners send. */
public final class Separators {

    private static final Pattern CONTROL = Pattern.compile("[\\x1c-\\x1e\\x04]");
    private static final Pattern PICTURE = Pattern.compile("[\u2404\u241c-\u241e]");
    private static final Pattern AS_TEXT = Pattern.compile(
            "[<{](GS|RS|FS|EOT|FNC1)[>}]|\\^(]|\\^|D)|\\\\(?:x|u00)(1d|1e|1c|04)|<0x(1d|1e|1c|04)>",
            Pattern.CASE_INSENSITIVE);

    private static final Map<String, String> NAMED = Map.ofEntries(
            Map.entry("GS", "\u001d"),
            Map.entry("FNC1", "\u001d"),
            Map.entry("]", "\u001d"),
            Map.entry("1D", "\u001d"),
            Map.entry("RS", "\u001e"),
            Map.entry("^", "\u001e"),
            Map.entry("1E", "\u001e"),
            Map.entry("FS", "\u001c"),
            Map.entry("1C", "\u001c"),
            Map.entry("EOT", "\u0004"),
            Map.entry("D", "\u0004"),
            Map.entry("04", "\u0004"));

    private Separators() {}

    /** The text with pictures of separators as the separators themselves. */
    static String ofPictures(String text) {
        return PICTURE.matcher(text)
                .replaceAll(picture -> String.valueOf((char) (picture.group().charAt(0) - '\u2400')));
    }

    /** The text with pictures instead of separators, for pages and their fields. */
    public static String toPictures(String text) {
        return CONTROL.matcher(text)
                .replaceAll(control -> String.valueOf((char) (control.group().charAt(0) + '\u2400')));
    }

    /** The text with names of separators as the separators themselves; the same text if it has true ones. */
    static String ofNames(String text) {
        return CONTROL.matcher(text).find() ? text : AS_TEXT.matcher(text).replaceAll(Separators::named);
    }

    private static String named(java.util.regex.MatchResult name) {
        for (int group = 1; group <= name.groupCount(); group++) {
            if (name.group(group) != null) {
                return Matcher.quoteReplacement(
                        NAMED.getOrDefault(name.group(group).toUpperCase(java.util.Locale.ROOT), ""));
            }
        }
        return "";
    }
}
