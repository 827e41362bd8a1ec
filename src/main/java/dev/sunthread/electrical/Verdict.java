package dev.sunthread.electrical;

/** What a test says of its unit: within the limits, outside of them, or nothing because the test itself went wrong. */
enum Verdict {
    PASS,
    FAIL,
    INVALID
}
