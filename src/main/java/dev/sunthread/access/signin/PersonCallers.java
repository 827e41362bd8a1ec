package dev.sunthread.access.signin;

import dev.sunthread.access.AccessProperties;
import dev.sunthread.access.Caller;
import dev.sunthread.access.Caller.Means;
import dev.sunthread.access.people.People;
import dev.sunthread.access.people.Person;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Makes callers of sign-ins, as the persons are now; a sign-in that is over makes none. */
@Component
class PersonCallers {

    private final People people;
    private final AccessProperties properties;
    private final Clock clock;

    PersonCallers(People people, AccessProperties properties, Clock clock) {
        this.people = people;
        this.properties = properties;
        this.clock = clock;
    }

    /** The person who signed in, unless blocked since, given other secrets, or signed in for too long. */
    Optional<SignedIn> of(SignIn signIn) {
        OffsetDateTime end = signIn.at().plus(length(signIn.means()).longest());
        return OffsetDateTime.now(clock).isAfter(end)
                ? Optional.empty()
                : people.find(signIn.mark())
                        .filter(person -> !person.blocked())
                        .filter(person -> !person.secretsChangedAt().isAfter(signIn.at()))
                        .map(person -> new SignedIn(caller(person, signIn), signIn));
    }

    AccessProperties.Length length(Means means) {
        return means == Means.BADGE ? properties.station() : properties.desk();
    }

    static Caller caller(Person person, SignIn signIn) {
        Caller caller = Caller.person(person.mark(), person.shown(), person.roles(), signIn.means(), signIn.station());
        return person.mustChange() && signIn.means() == Means.PASSWORD ? caller.whoMustChangeThePassword() : caller;
    }
}
