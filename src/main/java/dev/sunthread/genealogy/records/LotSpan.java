package dev.sunthread.genealogy.records;

import dev.sunthread.genealogy.walk.Moment;
import org.jspecify.annotations.Nullable;

/** A lot, an item it is recorded as, and from when to when it may have been in the plant, both included. */
public record LotSpan(long lot, @Nullable Long item, long from, long to) {

    public boolean mayBeThere(Moment window) {
        return from <= window.late() && window.early() <= to;
    }
}
