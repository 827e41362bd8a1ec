package dev.sunthread.genealogy.records;

import dev.sunthread.genealogy.walk.Moment;
import java.util.Set;

/**
 * A container of which there is a sign, and no record of what was filled into it.
 *
 * @param items the items it was used as, and those of the lots it was named with; none if nothing tells
 * @param last the last sign of it
 */
public record Unfilled(long container, Set<Long> items, Moment last) {

    /** The same, of any of these items if nothing tells which it is. */
    public Unfilled orOfAny(Set<Long> all) {
        return items.isEmpty() ? new Unfilled(container, all, last) : this;
    }
}
