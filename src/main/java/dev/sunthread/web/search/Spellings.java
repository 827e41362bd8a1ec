package dev.sunthread.web.search;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The other ways a label is commonly typed: case, nought and O, leading zeros of its last number. */
final class Spellings {

    private static final int MOST_ZEROS = 10;
    private static final Pattern LAST_NUMBER = Pattern.compile("(.*?)(0*)([1-9][0-9]*)([^0-9]*)");
    private static final List<UnaryOperator<String>> CASES =
            List.of(UnaryOperator.identity(), s -> s.toUpperCase(Locale.ROOT), s -> s.toLowerCase(Locale.ROOT));
    private static final List<UnaryOperator<String>> NOUGHTS = List.of(
            UnaryOperator.identity(),
            s -> s.replace('O', '0').replace('o', '0'),
            s -> s.replace('0', 'O'),
            s -> s.replace('0', 'o'));

    private Spellings() {}

    /** Every other spelling of the text; the text itself is not among them. */
    static Set<String> of(String text) {
        Set<String> spellings = new LinkedHashSet<>();
        for (UnaryOperator<String> nought : NOUGHTS) {
            for (String zeros : withOtherZeros(nought.apply(text))) {
                CASES.forEach(letters -> spellings.add(letters.apply(zeros)));
            }
        }
        spellings.remove(text);
        return spellings;
    }

    private static Set<String> withOtherZeros(String text) {
        Set<String> spellings = new LinkedHashSet<>(Set.of(text));
        Matcher number = LAST_NUMBER.matcher(text);
        if (number.matches()) {
            for (int zeros = 0; zeros <= MOST_ZEROS; zeros++) {
                spellings.add(number.group(1) + "0".repeat(zeros) + number.group(3) + number.group(4));
            }
        }
        return spellings;
    }
}
