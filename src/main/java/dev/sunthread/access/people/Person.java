package dev.sunthread.access.people;

import dev.sunthread.access.Role;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A person as the application knows them. The mark stands in the ledger for ever; name and sign-in name stand nowhere
 * but here and may be blanked.
 *
 * @param badgeEnding the last signs of the badge, to tell it from others
 * @param secretsChangedAt when password, PIN or badge changed last; whoever signed in before has to sign in anew
 */
public record Person(
        long id,
        String mark,
        @Nullable String name,
        @Nullable String signIn,
        String roleNames,
        boolean hasPassword,
        boolean mustChange,
        @Nullable String badgeEnding,
        boolean hasPin,
        OffsetDateTime secretsChangedAt,
        boolean blocked,
        boolean blanked) {

    public Set<Role> roles() {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        Arrays.stream(roleNames.split(" "))
                .filter(name -> !name.isEmpty())
                .map(Role::valueOf)
                .forEach(roles::add);
        return roles;
    }

    /** What the person is called on pages: the name, or the mark once the name is blanked. */
    public String shown() {
        return name == null || name.isBlank() ? mark : name;
    }
}
