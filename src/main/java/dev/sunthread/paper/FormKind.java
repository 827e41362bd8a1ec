package dev.sunthread.paper;

/** What a blank record is for. */
public enum FormKind {
    /** An operation of a released route, done on one unit. */
    OPERATION(true),
    CHARGE(false),
    DISCHARGE(false),
    CLEAN_POINT(false),
    CARRIER_LOAD(false),
    /** A load of equipment, from its start to its end. */
    RUN(true),
    SHIPMENT(false);

    private final boolean takesTime;

    FormKind(boolean takesTime) {
        this.takesTime = takesTime;
    }

    /** Whether it has a start and an end, and not one moment only. */
    public boolean takesTime() {
        return takesTime;
    }
}
