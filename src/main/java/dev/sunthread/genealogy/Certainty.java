package dev.sunthread.genealogy;

/**
 * How well an edge, a path or a node of an answer is known, strongest first. A path is as certain as its weakest edge,
 * a node as its strongest path.
 */
public enum Certainty {
    /** Recorded, and no uncertainty of a clock can undo it. */
    CERTAIN,
    /** Recorded so that it may have been. */
    POSSIBLE,
    /** Not recorded although something had to be. */
    UNPROVEN;

    public static Certainty weakest(Certainty a, Certainty b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    public static Certainty strongest(Certainty a, Certainty b) {
        return a.isAtLeast(b) ? a : b;
    }

    /** Whether this is as strong as the other, or stronger. */
    public boolean isAtLeast(Certainty other) {
        return compareTo(other) <= 0;
    }
}
