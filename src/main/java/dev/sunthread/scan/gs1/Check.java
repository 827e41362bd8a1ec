package dev.sunthread.scan.gs1;

import dev.sunthread.scan.meaning.Why;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The checks that the dictionary names for a component's content. Those on lists that change, such as countries and
 * company prefixes, are left out: a scan is not refused for them.
 */
final class Check {

    /** Any year will do to tell whether a day exists but for 29 February, where 2000 is as good as any. */
    private static final int YEAR = 2026;

    private record Named(Why why, Predicate<String> passes) {}

    private static final Map<String, Named> ALL = Map.ofEntries(
            Map.entry("csum", new Named(Why.WRONG_CHECK_DIGIT, CheckDigit::isRight)),
            Map.entry("csumalpha", new Named(Why.WRONG_CHECK_DIGIT, CheckCharacters::areRight)),
            date("yymmd0", text -> Days.ofSix(text, YEAR).isPresent()),
            date(
                    "yymmdd",
                    text -> !text.endsWith("00") && Days.ofSix(text, YEAR).isPresent()),
            date("yyyymmdd", text -> !text.endsWith("00") && Days.ofEight(text).isPresent()),
            date("hhmi", text -> text.matches("([01][0-9]|2[0-3])[0-5][0-9]")),
            date("hh", text -> text.matches("[01][0-9]|2[0-3]")),
            date("mi", text -> text.matches("[0-5][0-9]")),
            date("ss", text -> text.matches("[0-5][0-9]")),
            content("nonzero", text -> !text.matches("0*")),
            content("zero", text -> text.matches("0*")),
            content("nozeroprefix", text -> !text.startsWith("0") || text.equals("0")),
            content("hasnondigit", text -> !text.matches("[0-9]*")),
            content("yesno", text -> text.matches("[01]")),
            content("pieceoftotal", Check::isPieceOfTotal));

    private Check() {}

    private static Map.Entry<String, Named> date(String name, Predicate<String> passes) {
        return Map.entry(name, new Named(Why.WRONG_DATE, passes));
    }

    private static Map.Entry<String, Named> content(String name, Predicate<String> passes) {
        return Map.entry(name, new Named(Why.WRONG_CHARACTER, passes));
    }

    private static boolean isPieceOfTotal(String text) {
        int half = text.length() / 2;
        int piece = Integer.parseInt(text.substring(0, half));
        return piece > 0 && piece <= Integer.parseInt(text.substring(half));
    }

    /** What the named check finds wrong. */
    static Optional<Why> problem(String name, String text) {
        Named check = ALL.get(name);
        return check == null || check.passes().test(text) ? Optional.empty() : Optional.of(check.why());
    }
}
