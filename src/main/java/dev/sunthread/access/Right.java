package dev.sunthread.access;

import static dev.sunthread.access.Role.ADMINISTRATOR;
import static dev.sunthread.access.Role.AUDITOR;
import static dev.sunthread.access.Role.OPERATOR;
import static dev.sunthread.access.Role.PROCESS;
import static dev.sunthread.access.Role.QUALITY;

import java.util.Collection;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;

/** What may be done, and the roles that may do it. Only some of it may be done by badge and PIN, or by a machine. */
public enum Right {
    /** Come to the pages that one signs in by; nobody has to be signed in. */
    SIGN_IN(Reach.EVERYWHERE, Role.values()),
    /** Look after one's own account; the only right of a person who has to change the password first. */
    OWN_ACCOUNT(Reach.AT_STATIONS, Role.values()),
    /** Look up anything recorded. */
    LOOK_UP(Reach.EVERYWHERE, Role.values()),
    /** Record what happens on the line. */
    WORK(Reach.EVERYWHERE, OPERATOR, QUALITY, PROCESS),
    /** Decide: release holds and lots, settle findings and kept lines, sign deviations, contain. */
    JUDGE(Reach.AT_STATIONS, QUALITY),
    /** Release definitions and record checks of equipment. */
    DEFINE(Reach.EVERYWHERE, PROCESS),
    /** Choose which station a device stands at. */
    SET_UP(Reach.AT_DESKS, PROCESS, ADMINISTRATOR),
    /** Take the whole journal out. */
    EXPORT(Reach.FOR_MACHINES, QUALITY, PROCESS, AUDITOR, ADMINISTRATOR),
    /** See who may do what, who came and went, and who changed accounts. */
    SEE_ACCESS(Reach.AT_DESKS, AUDITOR, ADMINISTRATOR),
    /** Take journals in, whoever their lines name as actor. */
    IMPORT(Reach.FOR_MACHINES, ADMINISTRATOR),
    /** Put a whole export into an empty database. */
    RESTORE(Reach.AT_DESKS, ADMINISTRATOR),
    /** Change people, badges, qualifications, tokens and devices. */
    ADMINISTER(Reach.AT_DESKS, ADMINISTRATOR);

    private enum Reach {
        EVERYWHERE,
        AT_STATIONS,
        FOR_MACHINES,
        AT_DESKS
    }

    private final Reach reach;
    private final Set<Role> roles;

    Right(Reach reach, Role... roles) {
        this.reach = reach;
        this.roles = Set.of(roles);
    }

    /** The roles that have it, in their order. */
    public Set<Role> roles() {
        return EnumSet.copyOf(roles);
    }

    /** Whether a person who signed in by badge and PIN can have it; what needs the password can do more harm. */
    public boolean isForStations() {
        return reach == Reach.EVERYWHERE || reach == Reach.AT_STATIONS;
    }

    /** Whether a machine's token can be given it. */
    public boolean isForMachines() {
        return this != SIGN_IN && (reach == Reach.EVERYWHERE || reach == Reach.FOR_MACHINES);
    }

    /** Everything that one of these roles may do. */
    public static Set<Right> of(Collection<Role> roles) {
        Set<Right> rights = EnumSet.noneOf(Right.class);
        for (Right right : values()) {
            if (roles.stream().anyMatch(right.roles::contains)) {
                rights.add(right);
            }
        }
        return rights;
    }

    /** The right as one small word, for texts and addresses. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
