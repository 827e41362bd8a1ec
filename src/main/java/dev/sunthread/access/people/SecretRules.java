package dev.sunthread.access.people;

import dev.sunthread.access.Words;
import dev.sunthread.kernel.Refused;
import java.util.Locale;
import java.util.regex.Pattern;
import org.springframework.stereotype.Component;

/** What a password, a PIN and a badge have to be like. */
@Component
class SecretRules {

    static final int SHORTEST_PASSWORD = 12;
    private static final int LONGEST_PASSWORD = 200;
    private static final Pattern PIN = Pattern.compile("[0-9]{6,12}");
    private static final Pattern BADGE = Pattern.compile("\\S.{2,98}\\S");
    private static final String UP = "01234567890123456789";
    private static final String DOWN = "98765432109876543210";

    private final Words words;

    SecretRules(Words words) {
        this.words = words;
    }

    /** Length counts, not kinds of signs. @throws Refused if it is too short or says who the person is */
    void passwordIsLongAndNotTheName(String password, Person person) {
        if (password.length() < SHORTEST_PASSWORD || password.length() > LONGEST_PASSWORD) {
            throw words.refused("password-length", SHORTEST_PASSWORD, LONGEST_PASSWORD);
        }
        String small = password.toLowerCase(Locale.ROOT);
        if (small.chars().distinct().count() < 5
                || small.contains(person.mark().toLowerCase(Locale.ROOT))
                || (person.signIn() != null && small.contains(person.signIn().toLowerCase(Locale.ROOT)))) {
            throw words.refused("password-easy");
        }
    }

    /** @throws Refused if it has too few digits, one digit only, or digits in a row */
    void pinIsNotTheFirstOneTries(String pin) {
        if (!PIN.matcher(pin).matches()) {
            throw words.refused("pin-form");
        }
        if (pin.chars().distinct().count() < 2 || UP.contains(pin) || DOWN.contains(pin)) {
            throw words.refused("pin-easy");
        }
    }

    /** @throws Refused if it can't have come from a badge */
    void badgeIsReadable(String badge) {
        if (!BADGE.matcher(badge).matches()) {
            throw words.refused("badge-form");
        }
    }
}
