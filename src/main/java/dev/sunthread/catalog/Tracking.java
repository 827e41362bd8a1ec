package dev.sunthread.catalog;

/** How an item is told apart: each piece by serial, by the lot it came in, or not at all. */
public enum Tracking {
    SERIAL,
    LOT,
    NONE
}
