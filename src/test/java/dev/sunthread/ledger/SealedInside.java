package dev.sunthread.ledger;

/** Seals what a test's own transaction recorded, which the sealer by itself does not see before it is committed. */
public final class SealedInside {

    private SealedInside() {}

    /** The last position, of everything that the transaction sees. */
    public static long last(Sealer sealer) {
        sealer.sealLocked();
        return sealer.last();
    }
}
