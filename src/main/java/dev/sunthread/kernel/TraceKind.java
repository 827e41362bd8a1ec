package dev.sunthread.kernel;

/** What a node of the genealogy can be. */
public enum TraceKind {
    LOT,
    CONTAINER,
    UNIT,
    CURE_RUN,
    TEST_RUN,
    STATION_STEP,
    GAP
}
