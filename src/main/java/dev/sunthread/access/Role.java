package dev.sunthread.access;

import java.util.Locale;

/** What a person is in the plant; a person can have several roles. */
public enum Role {
    /** Works at stations and looks things up. */
    OPERATOR,
    /** Holds, releases, settles and contains. */
    QUALITY,
    /** Releases definitions and checks equipment. */
    PROCESS,
    /** Reads everything and changes nothing. */
    AUDITOR,
    /** Looks after people and machines, imports and restores; records nothing else. */
    ADMINISTRATOR;

    /** The role as one small word, for texts and addresses. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
