package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.walk.Reason;
import dev.sunthread.kernel.TraceRef;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import java.util.stream.Stream;

/** A lot that a use may have drawn from, and how well that is known. */
public record Candidate(TraceRef lot, Certainty certainty, Reason reason) {

    /** What tells most about a lot comes first: the class, the kind of reason, then the newest record. */
    public static final Comparator<Candidate> TELLING = Comparator.comparing(Candidate::certainty)
            .thenComparing(candidate -> candidate.reason().key().equals(PositionTimeline.CARRIED_OVER))
            .thenComparing(Candidate::reason, Comparator.reverseOrder());

    public Candidate atMost(Certainty limit) {
        return new Candidate(lot, Certainty.weakest(certainty, limit), reason);
    }

    /** One candidate for each lot, in the order of the lots. */
    public static List<Candidate> oncePerLot(Stream<Candidate> candidates) {
        TreeMap<TraceRef, Candidate> best = new TreeMap<>();
        candidates.forEach(one -> best.merge(one.lot(), one, BinaryOperator.minBy(TELLING)));
        return List.copyOf(best.values());
    }
}
