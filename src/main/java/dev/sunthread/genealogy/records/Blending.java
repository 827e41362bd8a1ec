package dev.sunthread.genealogy.records;

import dev.sunthread.genealogy.walk.Moment;
import java.util.Set;

/** A lot that was blended: its item, when, and the items of what is recorded to have gone in. */
public record Blending(long entry, long lot, long item, Moment at, Set<Long> components) {}
