package dev.sunthread.genealogy.walk;

import dev.sunthread.kernel.TraceRef;
import java.util.Collection;

/** Which way a walk goes along the edges: to where things went, or to where they came from. */
enum Direction {
    FORWARD {
        @Override
        Collection<Edge> leaving(Collection<TraceRef> nodes, EdgeSource source) {
            return source.outOf(nodes);
        }

        @Override
        TraceRef near(Edge edge) {
            return edge.from();
        }

        @Override
        TraceRef far(Edge edge) {
            return edge.to();
        }
    },
    BACKWARD {
        @Override
        Collection<Edge> leaving(Collection<TraceRef> nodes, EdgeSource source) {
            return source.into(nodes);
        }

        @Override
        TraceRef near(Edge edge) {
            return edge.to();
        }

        @Override
        TraceRef far(Edge edge) {
            return edge.from();
        }
    };

    /** The edges on which a walk this way leaves the nodes. */
    abstract Collection<Edge> leaving(Collection<TraceRef> nodes, EdgeSource source);

    abstract TraceRef near(Edge edge);

    abstract TraceRef far(Edge edge);
}
