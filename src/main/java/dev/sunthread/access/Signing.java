package dev.sunthread.access;

import dev.sunthread.kernel.Refused;

/** Proves who signs something at a station at which another person works; whichever package knows badges implements it. */
@FunctionalInterface
public interface Signing {

    /**
     * The person with this badge and PIN, with the rights that they reach.
     *
     * @throws Refused if they don't fit, or there were too many attempts
     */
    Caller prove(String badge, String pin, String station);
}
