package dev.sunthread.access;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Who a request comes from.
 *
 * @param mark what the ledger calls the person or machine
 * @param name the person's name or the machine's purpose, for its own eyes
 * @param roles none for a machine
 * @param rights what may be done now, which can be less than the roles allow
 * @param means how it was proven who it is
 * @param station the station that the device or machine stands at
 */
public record Caller(
        String mark,
        String name,
        Set<Role> roles,
        Set<Right> rights,
        Means means,
        @Nullable String station) {

    /** How it was proven who calls. */
    public enum Means {
        PASSWORD,
        BADGE,
        TOKEN
    }

    /** A person, with the rights of these roles as far as the means of signing in reach. */
    public static Caller person(String mark, String name, Set<Role> roles, Means means, @Nullable String station) {
        Set<Right> rights = Right.of(roles);
        rights.add(Right.OWN_ACCOUNT);
        if (means == Means.BADGE) {
            rights.removeIf(right -> !right.isForStations());
        }
        return new Caller(mark, name, roles, rights, means, station);
    }

    /** The same person before the password is changed, who may do nothing else. */
    public Caller whoMustChangeThePassword() {
        return new Caller(mark, name, roles, EnumSet.of(Right.OWN_ACCOUNT), means, station);
    }

    public boolean may(Right right) {
        return rights.contains(right);
    }

    /** Whether a person calls, and no machine. */
    public boolean isPerson() {
        return means != Means.TOKEN;
    }

    /** Whether it is a person who may do nothing yet but change the password. */
    public boolean mustChangePassword() {
        return isPerson() && rights.equals(EnumSet.of(Right.OWN_ACCOUNT));
    }
}
