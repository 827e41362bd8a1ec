package dev.sunthread.genealogy;

/** Which way a trace goes. */
public enum Way {
    /** From a suspect to everything it may be in. */
    FORWARD,
    /** From a unit to everything that may be in it. */
    BACKWARD
}
