package dev.sunthread.catalog;

import dev.sunthread.ledger.Fact;

/**
 * A revision that states what can be judged was released, which says something of runs since it is in force; published
 * within the door's transaction.
 *
 * @param thing recipe or specification
 */
public record TermsReleased(Fact<?> fact, String thing) {}
