package dev.sunthread.materials.incoming;

/** What can be said of a lot before it is used; several may be true at once. */
public enum LotStatus {
    /** Neither a receipt nor its making is recorded. */
    UNKNOWN_ORIGIN,
    /** It came about in the plant and was not inspected as incoming. */
    MADE_HERE,
    /** It was received, and no incoming release is recorded. */
    WAITING_FOR_RELEASE,
    RELEASED,
    REJECTED,
    ON_HOLD,
    EXPIRED,
    /** Nothing of it is left. */
    ENDED;

    /** The status in words. */
    public String words() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }
}
