package dev.sunthread.genealogy.walk;

import dev.sunthread.kernel.TraceRef;
import java.util.Collection;

/**
 * Where edges come from. One call asks for a whole frontier, so that a source over a database needs one read for it;
 * the order of what it gives doesn't matter, and both directions must give the same edges.
 */
public interface EdgeSource {

    /** Every edge that starts at one of these nodes. */
    Collection<Edge> outOf(Collection<TraceRef> nodes);

    /** Every edge that ends at one of these nodes. */
    Collection<Edge> into(Collection<TraceRef> nodes);
}
