package dev.sunthread.access.web;

import dev.sunthread.access.Role;
import dev.sunthread.access.people.PersonWords;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A person as an administrator fills them in. */
public record PersonForm(
        @Nullable String mark,
        @Nullable String name,
        @Nullable String signIn,
        @Nullable Set<Role> roles) {

    static PersonForm empty() {
        return new PersonForm("", "", "", Set.of());
    }

    PersonWords words() {
        String signingIn = stripped(signIn);
        return new PersonWords(
                stripped(mark),
                stripped(name),
                signingIn.isEmpty() ? null : signingIn,
                roles == null ? Set.of() : roles);
    }

    /** Whether a role is ticked. */
    public boolean has(Role role) {
        return roles != null && roles.contains(role);
    }

    private static String stripped(@Nullable String text) {
        return text == null ? "" : text.strip();
    }
}
