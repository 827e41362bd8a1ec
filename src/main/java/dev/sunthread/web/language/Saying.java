package dev.sunthread.web.language;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.springframework.core.io.ClassPathResource;

/**
 * One form of sentence that the application composes: words around places that stand for names, times or other sentences.
 *
 * @param key of the message that says the same in another language
 * @param words the longest words of it, without which a text can't have this form
 * @param quotes whether its places hold a person's own words
 */
record Saying(String key, Pattern form, String words, boolean quotes) {

    private static final Pattern PLACE = Pattern.compile("\\{(\\d)(,time)?}");
    private static final String TIME = "(\\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d(?::\\d\\d)?)";

    /** The forms of a bundle in the order of its English file, which reads as plain lines. */
    static List<Saying> all(String bundle) {
        try (var file = new BufferedReader(new InputStreamReader(
                new ClassPathResource(bundle + ".properties").getInputStream(), StandardCharsets.UTF_8))) {
            return file.lines()
                    .filter(line -> !line.startsWith("#") && line.contains("="))
                    .map(line -> line.split("=", 2))
                    .map(form -> of(form[0], form[1]))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Saying of(String key, String english) {
        StringBuilder form = new StringBuilder();
        Matcher places = PLACE.matcher(english);
        int end = 0;
        while (places.find()) {
            form.append(literal(english.substring(end, places.start()), end == 0))
                    .append(places.group(2) == null ? "(.+?)" : TIME);
            end = places.end();
        }
        form.append(literal(english.substring(end), end == 0));
        return new Saying(
                key,
                Pattern.compile(form.toString(), Pattern.DOTALL),
                longest(english),
                key.startsWith("quoted.") || key.startsWith("given."));
    }

    // a sentence may begin with a capital where the same words inside another do not
    private static String literal(String words, boolean first) {
        if (!first || words.isEmpty()) {
            return words.isEmpty() ? "" : Pattern.quote(words);
        }
        return "(?i:" + Pattern.quote(words.substring(0, 1)) + ")" + Pattern.quote(words.substring(1));
    }

    private static String longest(String english) {
        return PLACE.splitAsStream(english)
                .map(words -> words.isEmpty() ? words : words.substring(1))
                .max(Comparator.comparingInt(String::length))
                .orElse("");
    }

    /** What stands in its places, in their order, if the text has this form. */
    Optional<List<String>> read(String text) {
        if (!text.contains(words)) {
            return Optional.empty();
        }
        Matcher matcher = form.matcher(text);
        return matcher.matches()
                ? Optional.of(IntStream.rangeClosed(1, matcher.groupCount())
                        .mapToObj(matcher::group)
                        .toList())
                : Optional.empty();
    }
}
