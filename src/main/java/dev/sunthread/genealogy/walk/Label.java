package dev.sunthread.genealogy.walk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How a search reached a node: the mark it came with, the edge it came on, and how it reached that edge. */
record Label(long mark, @Nullable Edge edge, @Nullable Label before) {

    static Label start(long mark) {
        return new Label(mark, null, null);
    }

    Label over(Edge next, long nextMark) {
        return new Label(nextMark, next, this);
    }

    /** The edges crossed, in the direction of time whichever way the search went. */
    List<Edge> path(Direction direction) {
        List<Edge> edges = new ArrayList<>();
        for (Label label = this; label != null && label.edge != null; label = label.before) {
            edges.add(label.edge);
        }
        if (direction == Direction.FORWARD) {
            Collections.reverse(edges);
        }
        return List.copyOf(edges);
    }
}
