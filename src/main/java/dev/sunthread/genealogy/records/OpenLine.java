package dev.sunthread.genealogy.records;

import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import java.util.Set;

/** A kept line: when it says it happened, as far as that could be read, and the lots, units and positions it names. */
public record OpenLine(long entry, Moment from, Moment to, Set<TraceRef> named, Set<Long> positions) {

    public TraceRef node() {
        return new TraceRef(dev.sunthread.kernel.TraceKind.KEPT_LINE, entry);
    }
}
