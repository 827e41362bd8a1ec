package dev.sunthread.kernel;

/** What a node of the genealogy can be. */
public enum TraceKind {
    LOT,
    CONTAINER,
    UNIT,
    CURE_RUN,
    TEST_RUN,
    STATION_STEP,
    GAP,
    /** Unrecorded children of a parent, seen from what acted on the parent. */
    INSIDE_GAP,
    /** Unrecorded parents of a child, and all in them, seen from what acted on the child. */
    AROUND_GAP,
    /** Material of a lot whose container was not recorded. */
    LOT_CONTENT,
    /** A kept line that could not be accepted. */
    KEPT_LINE,
    CARRIER,
    /** Material of units that may have gone into lots and containers of which no record tells where they came from. */
    RECOVERY_GAP
}
