package dev.sunthread.catalog.judging;

/**
 * A run that a question selects.
 *
 * @param run the number behind the run's name
 * @param revision the revision that judges it
 */
record Selected(Judge.Case known, long run, long revision) {}
