package dev.sunthread.genealogy.walk;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.kernel.TraceRef;
import java.util.List;

/**
 * One node of an answer: its class, and the path of the search that gave it. Forward, the instant is the earliest
 * arrival at the node; backward, the latest start with which the node still reaches a target.
 */
public record Arrival(TraceRef node, Certainty certainty, long instant, Direction direction, Label label) {

    /** The edges from a suspect to a target in that order; empty for a node the trace began with. */
    public List<Edge> path() {
        return label.path(direction);
    }
}
