package dev.sunthread.testing;

import dev.sunthread.access.Role;
import dev.sunthread.access.people.Credentials;
import dev.sunthread.access.people.People;
import dev.sunthread.access.people.PersonWords;
import java.util.Set;
import org.springframework.context.ApplicationContext;

/** Persons whom the database knows, to sign in as in a browser or over HTTP. */
public final class KnownPeople {

    public static final String PASSWORD = "nine lenses of glass";
    public static final String PIN = "314159";

    private final People people;
    private final Credentials credentials;

    public KnownPeople(ApplicationContext context) {
        this.people = context.getBean(People.class);
        this.credentials = context.getBean(Credentials.class);
    }

    /** Adds a person whose sign-in name is the mark, with {@link #PASSWORD}, {@link #PIN} and the badge BADGE-mark. */
    public String add(String mark, Role... roles) {
        people.add(new PersonWords(mark, "Person " + mark, mark, Set.of(roles)));
        credentials.setDocumented(mark, PASSWORD, "BADGE-" + mark, PIN);
        return mark;
    }
}
