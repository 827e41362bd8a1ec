package dev.sunthread.genealogy;

/** How many distinct units, or lots, of one level have each class, for one of the times asked. */
public record Count(When when, String level, long certain, long possible, long unproven) {}
