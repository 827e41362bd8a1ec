package dev.sunthread.genealogy;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An answer as a picture: from the suspects through levels to the places where the outermost units are, aggregated by
 * level, class and place, so that it has as many parts for ten units as for a hundred thousand. Counts are of distinct
 * things.
 *
 * @param nodes in the order of their columns
 * @param links from left to right, in the direction of time; where a thing was reached against the columns, as a lot
 *     made from another is, the link is told and marked
 */
public record Flow(List<Node> nodes, List<Link> links) {

    /** The level of the node that stands for kept lines: out of it comes what they led to. */
    public static final String KEPT_LINE = "kept line";

    /** What a node stands for. */
    public enum What {
        SUSPECTS,
        LEVEL,
        PLACE,
        /** All places beside those that hold most. */
        OTHER_PLACES
    }

    /**
     * All things of a level and class, or all outermost units at a place.
     *
     * @param column from 0 at the left, without a gap
     * @param level absent for suspects and places
     * @param place where units were last seen; of places only
     */
    public record Node(
            String id,
            What what,
            int column,
            @Nullable String level,
            @Nullable Certainty certainty,
            @Nullable String place,
            long count) {}

    /** So many things of the one node were reached from, or are now at, the other; {@code back} if against the columns. */
    public record Link(String from, String to, long count, boolean back) {}
}
