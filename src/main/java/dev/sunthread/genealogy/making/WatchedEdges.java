package dev.sunthread.genealogy.making;

import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.EdgeSource;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;

/** Edges that say, as often as they are asked for, how many nodes were looked at. */
public record WatchedEdges(EdgeSource source, Watch watch) implements EdgeSource {

    @Override
    public Collection<Edge> outOf(Collection<TraceRef> nodes) {
        watch.reached(nodes.size());
        return source.outOf(nodes);
    }

    @Override
    public Collection<Edge> into(Collection<TraceRef> nodes) {
        watch.reached(nodes.size());
        return source.into(nodes);
    }
}
