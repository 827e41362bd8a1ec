package dev.sunthread.kernel;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the serials of an item look like: {@code #} stands for a digit, {@code @} for a letter A to Z, {@code ?} for
 * either, every other character for itself. A serial has exactly as many characters as its pattern.
 */
public record SerialPattern(String text) {

    private static final Pattern COUNTER = Pattern.compile("#+(?=[^#]*$)");

    /** Whether the pattern can tell serials apart: something in it varies. */
    public boolean isVaried() {
        return text.chars().anyMatch(character -> character == '#' || character == '@' || character == '?');
    }

    public boolean matches(String serial) {
        if (serial.length() != text.length()) {
            return false;
        }
        for (int i = 0; i < text.length(); i++) {
            if (!fits(text.charAt(i), serial.charAt(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean fits(char asked, char given) {
        return switch (asked) {
            case '#' -> isDigit(given);
            case '@' -> isLetter(given);
            case '?' -> isDigit(given) || isLetter(given);
            default -> asked == given;
        };
    }

    private static boolean isDigit(char character) {
        return character >= '0' && character <= '9';
    }

    private static boolean isLetter(char character) {
        return character >= 'A' && character <= 'Z';
    }

    /** Whether serials can be counted: the last run of digits varies, and nothing else does. */
    public boolean counts() {
        return COUNTER.matcher(text).find()
                && text.replaceAll(COUNTER.pattern(), "").matches("[^#@?]*");
    }

    /** The serial of that number; empty if the pattern does not count or has too few digits. */
    public Optional<String> serial(long number) {
        Matcher counter = COUNTER.matcher(text);
        if (!counts() || !counter.find() || number < 0) {
            return Optional.empty();
        }
        int digits = counter.end() - counter.start();
        String counted = ("%0" + digits + "d").formatted(number);
        return counted.length() > digits
                ? Optional.empty()
                : Optional.of(text.substring(0, counter.start()) + counted + text.substring(counter.end()));
    }

    /** The pattern as a regular expression of PostgreSQL, its characters literal but for what varies. */
    public String expression() {
        StringBuilder expression = new StringBuilder("^");
        for (char character : text.toCharArray()) {
            switch (character) {
                case '#' -> expression.append("[0-9]");
                case '@' -> expression.append("[A-Z]");
                case '?' -> expression.append("[0-9A-Z]");
                default ->
                    expression
                            .append(Character.isLetterOrDigit(character) ? "" : "\\")
                            .append(character);
            }
        }
        return expression.append('$').toString();
    }

    /** The number of a serial; empty if it is not of this pattern, or the pattern does not count. */
    public Optional<Long> number(String serial) {
        Matcher counter = COUNTER.matcher(text);
        if (!counts() || !matches(serial) || !counter.find() || counter.end() - counter.start() > 18) {
            return Optional.empty();
        }
        return Optional.of(Long.valueOf(serial.substring(counter.start(), counter.end())));
    }
}
