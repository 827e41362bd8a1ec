package dev.sunthread.access.people;

import dev.sunthread.access.AccessLog;
import dev.sunthread.access.AccessLog.Event;
import dev.sunthread.access.Role;
import dev.sunthread.access.Words;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Persons: added, described, blocked and blanked, each change in the access log. At least one administrator stays. */
@Service
public class People {

    private static final Pattern MARK = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,31}");

    private final PersonRows rows;
    private final AccessLog log;
    private final Words words;

    People(PersonRows rows, AccessLog log, Words words) {
        this.rows = rows;
        this.log = log;
        this.words = words;
    }

    /** Everybody, those blanked last. */
    public List<Person> all() {
        return rows.all();
    }

    public Optional<Person> find(String mark) {
        return rows.marked(mark);
    }

    /** The person with this mark. @throws Refused if there is none */
    public Person marked(String mark) {
        return find(mark).orElseThrow(() -> words.refused("no-person", mark));
    }

    /** Adds a person, who can't sign in before a password, or a badge and a PIN, are given. */
    @Transactional
    public Person add(PersonWords said) {
        if (!MARK.matcher(said.mark()).matches()) {
            throw words.refused("mark-form");
        }
        if (!rows.take(said.mark())) {
            throw words.refused("mark-taken", said.mark());
        }
        unique(() -> rows.insert(said.mark(), said.name(), said.signIn()), said.signIn());
        Person person = marked(said.mark());
        rows.setRoles(person.id(), atLeastOne(said.roles()));
        log.note(Event.PERSON_ADDED, said.mark(), listed(said.roles()));
        return marked(said.mark());
    }

    /** Says a person's name, sign-in name and roles anew. */
    @Transactional
    public void describe(PersonWords said) {
        Person person = marked(said.mark());
        if (!said.roles().contains(Role.ADMINISTRATOR)) {
            anAdministratorStays(person);
        }
        if (person.blanked()) {
            throw words.refused("person-blanked");
        }
        unique(() -> rows.describe(person.id(), said.name(), said.signIn()), said.signIn());
        rows.setRoles(person.id(), atLeastOne(said.roles()));
        log.note(Event.PERSON_CHANGED, said.mark(), listed(said.roles()));
    }

    /** Keeps a person out from the next request on, or lets a person in again. */
    @Transactional
    public void setBlocked(String mark, boolean blocked) {
        Person person = marked(mark);
        if (blocked) {
            anAdministratorStays(person);
        } else if (person.blanked()) {
            throw words.refused("person-blanked");
        }
        rows.setBlocked(person.id(), blocked);
        log.note(blocked ? Event.PERSON_BLOCKED : Event.PERSON_UNBLOCKED, mark, null);
    }

    /** Forgets for good who a person was; what was recorded keeps the mark. */
    @Transactional
    public void blank(String mark) {
        Person person = marked(mark);
        anAdministratorStays(person);
        rows.blank(person.id());
        log.note(Event.PERSON_BLANKED, mark, null);
    }

    private void anAdministratorStays(Person person) {
        if (person.roles().contains(Role.ADMINISTRATOR)
                && !person.blocked()
                && !rows.anotherAdministrator(person.id())) {
            throw words.refused("last-administrator");
        }
    }

    private Set<Role> atLeastOne(Set<Role> roles) {
        if (roles.isEmpty()) {
            throw words.refused("no-role");
        }
        return roles;
    }

    private void unique(Runnable write, @Nullable String signIn) {
        try {
            write.run();
        } catch (DuplicateKeyException e) {
            throw words.refused("sign-in-taken", String.valueOf(signIn));
        }
    }

    private static String listed(Set<Role> roles) {
        return roles.stream().map(Role::word).sorted().collect(Collectors.joining(", "));
    }
}
