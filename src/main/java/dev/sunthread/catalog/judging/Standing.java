package dev.sunthread.catalog.judging;

/** A run as it stands: under the revision in force when it began, and by the checks next to it. */
public record Standing(long revision, Judge.Case run) {}
