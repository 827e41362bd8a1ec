package dev.sunthread.access.people;

import dev.sunthread.access.Callers;
import dev.sunthread.access.Right;
import dev.sunthread.access.SecondPersons;
import dev.sunthread.access.Words;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.stereotype.Component;

/** Proves a second person by badge and PIN, with the same delays as signing in. */
@Component
class BadgeBeside implements SecondPersons {

    private final SignIns signIns;
    private final Callers callers;
    private final Words words;

    BadgeBeside(SignIns signIns, Callers callers, Words words) {
        this.signIns = signIns;
        this.callers = callers;
        this.words = words;
    }

    @Override
    public String proven(String badge, String pin, String station) {
        Person person = known(badge, pin, station);
        if (person.mark().equals(callers.signedIn().mark())) {
            throw words.refused("second-is-first");
        }
        if (!Right.of(person.roles()).contains(Right.WORK)) {
            throw words.refused("second-may-not", person.mark());
        }
        return person.mark();
    }

    private Person known(String badge, String pin, String station) {
        try {
            return signIns.beside(badge, pin, station);
        } catch (BadCredentialsException e) {
            throw words.refused("second-unknown");
        } catch (TryLater e) {
            throw words.refused("second-later", e.seconds());
        }
    }
}
