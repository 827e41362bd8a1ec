package dev.sunthread.genealogy.records;

import dev.sunthread.genealogy.walk.Moment;
import java.util.Set;

/**
 * A container of which there is a sign, and no record of what was filled into it.
 *
 * @param items the items it was used as, and those of the lots it was named with; none if nothing tells
 * @param last the last sign of it
 */
public record Unfilled(long container, Set<Long> items, Moment last) {}
