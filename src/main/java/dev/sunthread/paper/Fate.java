package dev.sunthread.paper;

/** Why a printed record will not be entered. */
public enum Fate {
    /** Nothing is written on it. */
    BLANK,
    /** What was to be written on it is written on another record. */
    SPOILED,
    /** Nobody knows what is written on it. */
    LOST
}
