package dev.sunthread.access.people;

import dev.sunthread.access.Caller;
import dev.sunthread.access.Signing;
import dev.sunthread.access.Words;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.stereotype.Component;

/** Proves by badge and PIN who signs at a station; attempts count as those to sign in do. */
@Component
class BadgeSigning implements Signing {

    private final SignIns signIns;
    private final Words words;

    BadgeSigning(SignIns signIns, Words words) {
        this.signIns = signIns;
        this.words = words;
    }

    @Override
    public Caller prove(String badge, String pin, String station) {
        try {
            Person person = signIns.signing(badge, pin, station);
            return Caller.person(person.mark(), person.shown(), person.roles(), Caller.Means.BADGE, station);
        } catch (TryLater later) {
            throw words.refused("signing-later", later.seconds());
        } catch (BadCredentialsException wrong) {
            throw words.refused("signing-wrong");
        }
    }
}
