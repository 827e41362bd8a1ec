package dev.sunthread.genealogy;

/** The times for which one answer tells classes. */
public enum When {
    EVER,
    NOW,
    AT_SHIPMENT,
    /** The time that the question names. */
    AT
}
