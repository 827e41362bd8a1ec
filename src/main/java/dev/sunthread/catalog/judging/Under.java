package dev.sunthread.catalog.judging;

/**
 * What came out for a run under one revision.
 *
 * @param inForce whether the revision was in force when the run began
 */
public record Under(String revision, boolean inForce, Judged judged) {}
