package dev.sunthread.web.search;

import dev.sunthread.scan.Likeness;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * How names are compared with a text, as a condition with the parameters {@code texts} and {@code prefix}.
 *
 * @param compared gives the condition on a column
 * @param reason says why a name is offered
 */
record Asked(UnaryOperator<String> compared, List<String> texts, String prefix, Function<String, String> reason) {

    static Asked exactly(String text) {
        return new Asked(column -> column + " = ANY (:texts)", List.of(text), "", name -> "is called exactly so");
    }

    /** Whatever the text is easily taken for. */
    static Asked likely(String text) {
        return new Asked(
                Likeness::condition,
                Likeness.spellings(text),
                "",
                name -> "is spelled nearly so" + differences(text, name));
    }

    static Asked beginning(String text) {
        String prefix = text.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_") + "%";
        return new Asked(column -> column + " LIKE :prefix", List.of(), prefix, name -> "begins so");
    }

    private static String differences(String text, String name) {
        String words =
                Likeness.between(text, name).stream().map(Likeness::words).collect(Collectors.joining(", "));
        return words.isEmpty() ? "" : "; other in " + words;
    }

    String on(String column) {
        return compared.apply(column);
    }

    String why(String name) {
        return reason.apply(name);
    }
}
