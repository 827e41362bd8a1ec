package dev.sunthread.genealogy;

import dev.sunthread.kernel.TraceRef;

/** A node that a trace starts from: since when it is suspect, in microseconds, and how surely it is meant. */
record Suspect(TraceRef node, long start, Certainty certainty) {

    static Suspect sinceEver(TraceRef node) {
        return new Suspect(node, Long.MIN_VALUE, Certainty.CERTAIN);
    }

    /** Suspect as soon as one of the two is. */
    Suspect or(Suspect other) {
        Certainty stronger = certainty.isAtLeast(other.certainty) ? certainty : other.certainty;
        return new Suspect(node, Math.min(start, other.start), stronger);
    }

    /** Suspect as soon as both are. */
    Suspect and(Suspect other) {
        return new Suspect(node, Math.max(start, other.start), Certainty.weakest(certainty, other.certainty));
    }
}
