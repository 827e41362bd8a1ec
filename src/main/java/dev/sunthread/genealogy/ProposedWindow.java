package dev.sunthread.genealogy;

/**
 * From when to when something was suspect, as the records propose it, and why.
 *
 * @param opened why it opens there, as a sentence
 * @param closed why it closes there, as a sentence
 * @param widened by how much both ends were moved apart, as a sentence
 */
public record ProposedWindow(Scope.Window window, String opened, String closed, String widened) {}
