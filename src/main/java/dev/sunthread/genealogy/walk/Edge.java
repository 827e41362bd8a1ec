package dev.sunthread.genealogy.walk;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.Comparator;

/**
 * One way for matter or influence to pass from one node to another: it can first be crossed at {@code begin} and last
 * at {@code lastCrossing}, and what crossed stays until {@code stayEnd}, which itself is no longer part of the stay.
 */
public record Edge(
        TraceRef from,
        TraceRef to,
        Certainty certainty,
        Moment begin,
        Moment lastCrossing,
        Moment stayEnd,
        Reason reason) {

    /** The reason of a stay that is known by its end alone. */
    public static final String REMOVED = "removed-without-installation";

    /** By ends, certainty, times and reason: equal only for edges that are equal. */
    public static final Comparator<Edge> ORDER = Comparator.comparing(Edge::from)
            .thenComparing(Edge::to)
            .thenComparing(Edge::certainty)
            .thenComparing(Edge::begin, byInstants())
            .thenComparing(Edge::lastCrossing, byInstants())
            .thenComparing(Edge::stayEnd, byInstants())
            .thenComparing(Edge::reason);

    /** Crossed at one moment, and nothing takes it back: a use, a blend, a split, a recovery. */
    public static Edge atOnce(TraceRef from, TraceRef to, Certainty certainty, Moment at, Reason reason) {
        return new Edge(from, to, certainty, at, at, Moment.NEVER, reason);
    }

    /** Crossed at any moment from start to end, both included, and nothing takes it back: cure, test, station-step. */
    public static Edge during(
            TraceRef from, TraceRef to, Certainty certainty, Moment start, Moment end, Reason reason) {
        return new Edge(from, to, certainty, start, end.orLater(start), Moment.NEVER, reason);
    }

    /**
     * A child unit in its parent until {@code removal}: crossed at any moment before it and gone from then on. One
     * removed in the microsecond of its installation was still there once.
     */
    public static Edge installed(
            TraceRef child, TraceRef parent, Certainty certainty, Moment from, Moment removal, Reason reason) {
        Moment last = removal.justBefore().orLater(from);
        return new Edge(child, parent, certainty, from, last, removal, reason);
    }

    /** Whether it puts a unit into another one; what is not recorded is put in through its gap. */
    public boolean placesUnit() {
        boolean fromUnit = from.kind() == TraceKind.UNIT;
        boolean filledGap = from.kind() == TraceKind.GAP && reason.named().containsKey("position");
        return fromUnit && to.kind() == TraceKind.UNIT
                || fromUnit && to.kind() == TraceKind.GAP
                || filledGap && to.kind() == TraceKind.UNIT;
    }

    /** Whether it takes matter out of a unit for good: it stays where it went, though what it came through may leave. */
    public boolean takesOut() {
        return from.kind() == TraceKind.UNIT
                && (to.kind() == TraceKind.LOT
                        || to.kind() == TraceKind.CONTAINER
                        || to.kind() == TraceKind.KEPT_LINE
                        || to.kind() == TraceKind.RECOVERY_GAP);
    }

    /** The same crossing with a stay that ends: a lot-tracked part that can be taken out of its position. */
    public Edge until(Moment end) {
        return new Edge(from, to, certainty, begin, lastCrossing, end, reason);
    }

    /** This edge, but no more certain than {@code limit}. */
    public Edge atMost(Certainty limit) {
        return new Edge(from, to, Certainty.weakest(certainty, limit), begin, lastCrossing, stayEnd, reason);
    }

    /** This edge where its ends may be of another body: at most possible, and without an end that is known. */
    public Edge doubted() {
        long last = lastCrossing.equals(begin) ? lastCrossing.late() : Long.MAX_VALUE;
        return new Edge(
                from,
                to,
                Certainty.weakest(certainty, Certainty.POSSIBLE),
                begin,
                new Moment(lastCrossing.early(), last),
                new Moment(stayEnd.early(), Long.MAX_VALUE),
                reason);
    }

    private static Comparator<Moment> byInstants() {
        return Comparator.comparingLong(Moment::early).thenComparingLong(Moment::late);
    }
}
