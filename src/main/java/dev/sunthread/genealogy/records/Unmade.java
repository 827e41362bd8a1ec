package dev.sunthread.genealogy.records;

import dev.sunthread.genealogy.walk.Moment;
import java.util.Set;

/**
 * A lot of which there is a sign, and no record of where it came from.
 *
 * @param items the items it was used as, or is recorded as, none if nothing tells
 * @param first the first sign of it
 */
public record Unmade(long lot, Set<Long> items, Moment first) {}
