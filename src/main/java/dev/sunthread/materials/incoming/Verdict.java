package dev.sunthread.materials.incoming;

/** What came of an incoming inspection. */
public enum Verdict {
    RELEASED,
    REJECTED
}
