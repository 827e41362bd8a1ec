package dev.sunthread.access;

import dev.sunthread.kernel.Refused;

/** Proves that another person stands beside the one who is signed in. */
public interface SecondPersons {

    /**
     * The mark of the person with this badge and PIN, who may record work and is not the one who is signed in.
     *
     * @throws Refused if badge and PIN don't fit, if it is the same person, or after too many attempts
     */
    String proven(String badge, String pin, String station);
}
