package dev.sunthread.genealogy;

import org.jspecify.annotations.Nullable;

/** A lot, an item it is recorded as, and from when to when it may have been in the plant, both included. */
record LotSpan(long lot, @Nullable Long item, long from, long to) {

    boolean mayBeThere(Moment window) {
        return from <= window.late() && window.early() <= to;
    }
}
