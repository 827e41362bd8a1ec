package dev.sunthread.genealogy.making;

/** Ends the making of an answer for which nobody waits any more. */
public final class NobodyWaits extends RuntimeException {

    NobodyWaits() {
        super("Nobody waits for this answer any more");
    }
}
