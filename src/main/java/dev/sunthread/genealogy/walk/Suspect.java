package dev.sunthread.genealogy.walk;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.kernel.TraceRef;

/** A node that a trace starts from: since when it is suspect, in microseconds, and how surely it is meant. */
public record Suspect(TraceRef node, long start, Certainty certainty) {

    public static Suspect sinceEver(TraceRef node) {
        return new Suspect(node, Long.MIN_VALUE, Certainty.CERTAIN);
    }

    /** Suspect as soon as one of the two is. */
    public Suspect or(Suspect other) {
        Certainty stronger = certainty.isAtLeast(other.certainty) ? certainty : other.certainty;
        return new Suspect(node, Math.min(start, other.start), stronger);
    }

    /** Suspect as soon as both are. */
    public Suspect and(Suspect other) {
        return new Suspect(node, Math.max(start, other.start), Certainty.weakest(certainty, other.certainty));
    }
}
