package dev.sunthread.access.people;

import dev.sunthread.access.AccessLog;
import dev.sunthread.access.AccessLog.Event;
import dev.sunthread.access.Secrets;
import dev.sunthread.access.Words;
import dev.sunthread.access.people.PersonSecrets.Secret;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What persons sign in by. Whatever changes ends the person's sessions with their next request. */
@Service
public class Credentials {

    private static final int ENDING = 3;

    private final PersonRows rows;
    private final PersonSecrets secrets;
    private final SecretRules rules;
    private final AccessLog log;
    private final Words words;

    Credentials(PersonRows rows, PersonSecrets secrets, SecretRules rules, AccessLog log, Words words) {
        this.rows = rows;
        this.secrets = secrets;
        this.rules = rules;
        this.log = log;
        this.words = words;
    }

    /** Gives a person a password that has to be changed at the next sign-in, and says it this once. */
    @Transactional
    public String oneTimePassword(String mark) {
        String password = Secrets.typed();
        secrets.setPassword(presentAtDesks(mark).id(), password, true);
        log.note(Event.PASSWORD_RESET, mark, null);
        return password;
    }

    /** Changes a person's own password. @throws Refused if the old one is wrong or the new one is not good */
    @Transactional
    public void changePassword(String mark, String old, String password) {
        Person person = present(mark);
        if (!secrets.fits(person, Secret.PASSWORD, old)) {
            throw words.refused("password-wrong");
        }
        if (old.equals(password)) {
            throw words.refused("password-same");
        }
        rules.passwordIsLongAndNotTheName(password, person);
        secrets.setPassword(person.id(), password, false);
        log.note(Event.PASSWORD_CHANGED, mark, null);
    }

    /** Sets a PIN, by the person or by an administrator. @throws Refused if it is not good */
    @Transactional
    public void setPin(String mark, String pin) {
        rules.pinIsNotTheFirstOneTries(pin);
        secrets.setPin(present(mark).id(), pin);
        log.note(Event.PIN_CHANGED, mark, null);
    }

    /** Gives a person a badge, as scanned. @throws Refused if it can't be one, or somebody has it */
    @Transactional
    public void giveBadge(String mark, String badge) {
        rules.badgeIsReadable(badge);
        String ending = badge.substring(badge.length() - ENDING);
        try {
            secrets.setBadge(present(mark).id(), Secrets.hash(badge), ending);
        } catch (DuplicateKeyException e) {
            throw words.refused("badge-taken");
        }
        log.note(Event.BADGE_GIVEN, mark, "..." + ending);
    }

    @Transactional
    public void takeBadge(String mark) {
        secrets.setBadge(present(mark).id(), null, null);
        log.note(Event.BADGE_TAKEN, mark, null);
    }

    /** Sets the password and, if there is one, the PIN that the documentation of the demo plant names. */
    @Transactional
    public void setDocumented(String mark, String password, String badge, String pin) {
        long person = present(mark).id();
        secrets.setPassword(person, password, false);
        secrets.setBadge(person, Secrets.hash(badge), badge.substring(badge.length() - ENDING));
        secrets.setPin(person, pin);
    }

    private Person presentAtDesks(String mark) {
        Person person = present(mark);
        if (person.signIn() == null) {
            throw words.refused("no-sign-in-name");
        }
        return person;
    }

    private Person present(String mark) {
        Person person = rows.marked(mark).orElseThrow(() -> words.refused("no-person", mark));
        if (person.blanked()) {
            throw words.refused("person-blanked");
        }
        return person;
    }
}
