package dev.sunthread.access.people;

import dev.sunthread.access.AccessLog;
import dev.sunthread.access.AccessLog.Event;
import dev.sunthread.access.Secrets;
import dev.sunthread.access.people.PersonSecrets.Secret;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.stereotype.Service;

/**
 * Proves who signs in. A name that nobody has, a wrong secret and a blocked person are refused in the same words and in
 * about the same time; too many attempts are delayed.
 */
@Service
public class SignIns {

    private final PersonRows people;
    private final PersonSecrets secrets;
    private final Attempts attempts;
    private final AccessLog log;

    SignIns(PersonRows people, PersonSecrets secrets, Attempts attempts, AccessLog log) {
        this.people = people;
        this.secrets = secrets;
        this.attempts = attempts;
        this.log = log;
    }

    /**
     * The person with this sign-in name and password.
     *
     * @throws BadCredentialsException if they don't fit
     * @throws TryLater if there were too many attempts
     */
    public Person byPassword(String name, String password) {
        Optional<Person> person = people.signingInAs(name.strip());
        // hashed, because a password typed in the wrong field would stand there
        Person proven =
                proven("password " + hashed(name.strip().toLowerCase(Locale.ROOT)), person, password, Secret.PASSWORD);
        secrets.strengthen(proven.id(), password);
        log.noteOf(proven.mark(), Event.SIGNED_IN, null, "password");
        return proven;
    }

    /**
     * The person with this badge and PIN, at a device of a station.
     *
     * @throws BadCredentialsException if they don't fit
     * @throws TryLater if there were too many attempts
     */
    public Person byBadge(String badge, String pin, String station) {
        Person proven = holder(badge, pin);
        log.noteOf(proven.mark(), Event.SIGNED_IN, station, "badge");
        return proven;
    }

    /**
     * The person with this badge and PIN, who signs something where another is signed in.
     *
     * @throws BadCredentialsException if they don't fit
     * @throws TryLater if there were too many attempts
     */
    public Person signing(String badge, String pin, String station) {
        Person proven = holder(badge, pin);
        log.noteOf(proven.mark(), Event.SIGNED_AT_STATION, station, "badge");
        return proven;
    }

    private Person holder(String badge, String pin) {
        return proven("PIN " + hashed(badge.strip()), people.withBadge(Secrets.hash(badge.strip())), pin, Secret.PIN);
    }

    private Person proven(String subject, Optional<Person> person, String said, Secret secret) {
        String mark = person.map(Person::mark).orElse(null);
        begin(subject, mark);
        boolean fits = secrets.fits(person.orElse(null), secret, said);
        if (!fits || person.filter(one -> !one.blocked()).isEmpty()) {
            log.noteOf(
                    null,
                    Event.SIGN_IN_REFUSED,
                    mark,
                    person.filter(Person::blocked).isPresent() ? "blocked" : null);
            throw new BadCredentialsException("name and secret don't fit");
        }
        attempts.succeeded(subject);
        return person.orElseThrow();
    }

    private static String hashed(String text) {
        return HexFormat.of().formatHex(Secrets.hash(text));
    }

    private void begin(String subject, @Nullable String mark) {
        try {
            attempts.begin(subject);
        } catch (TryLater e) {
            log.noteOf(null, Event.SIGN_IN_REFUSED, mark, "too many attempts");
            throw e;
        }
    }
}
