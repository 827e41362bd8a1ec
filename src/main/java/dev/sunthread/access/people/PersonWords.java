package dev.sunthread.access.people;

import dev.sunthread.access.Role;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What an administrator says of a person.
 *
 * @param mark what the ledger calls the person; given once and never changed
 * @param name shown to people of the plant only
 * @param signIn the name typed to sign in at a desk; none if the person works at stations only
 */
public record PersonWords(
        String mark, String name, @Nullable String signIn, Set<Role> roles) {}
