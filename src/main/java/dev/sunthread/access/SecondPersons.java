package dev.sunthread.access;

import dev.sunthread.kernel.Refused;
import org.springframework.stereotype.Component;

/** Proves that another person stands beside the one who is signed in. */
@Component
public class SecondPersons {

    private final Signing signing;
    private final Callers callers;
    private final Words words;

    SecondPersons(Signing signing, Callers callers, Words words) {
        this.signing = signing;
        this.callers = callers;
        this.words = words;
    }

    /**
     * The mark of the person with this badge and PIN, who may record work and is not the one who is signed in.
     *
     * @throws Refused if badge and PIN don't fit, if it is the same person, or after too many attempts
     */
    public String proven(String badge, String pin, String station) {
        Caller person = signing.prove(badge, pin, station);
        if (person.mark().equals(callers.signedIn().mark())) {
            throw words.refused("second-is-first");
        }
        if (!person.may(Right.WORK)) {
            throw words.refused("second-may-not", person.mark());
        }
        return person.mark();
    }
}
