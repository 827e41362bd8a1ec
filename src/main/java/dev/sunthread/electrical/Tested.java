package dev.sunthread.electrical;

/** What a test run is about, by internal numbers. */
record Tested(long run, long unit, long specification, long equipment) {}
