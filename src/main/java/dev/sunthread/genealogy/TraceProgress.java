package dev.sunthread.genealogy;

/**
 * An answer that is being made.
 *
 * @param id names it, once it is made
 * @param cutoff the ledger position it is made for; asked with it, the question is the same
 * @param place how many answers are made before it has its turn, itself counted; nought once it is being made
 * @param reached the nodes whose edges were looked at so far
 */
public record TraceProgress(String id, long cutoff, Stage stage, int place, long reached) {}
