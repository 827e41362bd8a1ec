package dev.sunthread.genealogy.walk;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.Question;

/**
 * How one search sees edges. The certain search counts on nothing that a clock's uncertainty could undo: late begins
 * and early ends; the wider ones take early begins and late ends.
 *
 * <p>A forward search carries the latest begin so far, a backward search the earliest last crossing so far. The second
 * is the first with time turned round, so both carry a <em>mark</em> that only rises and is better the lower it is.
 */
record Lens(Certainty weakest, Question question, Direction direction) {

    boolean admits(Edge edge) {
        return isOfClass(edge) && (isStrict() ? question.surelyCovers(edge) : question.possiblyCovers(edge));
    }

    /** Whether its certainty is enough, whatever it covers. */
    boolean isOfClass(Edge edge) {
        return edge.certainty().isAtLeast(weakest);
    }

    /**
     * Whether stays before an edge that takes matter out of a unit need not last until the instant asked. A certain
     * search counts on no such path: what it went through may have left before.
     */
    boolean freesStays() {
        return !question.isEver() && !isStrict();
    }

    /** The highest mark with which the edge can still be crossed, ties included. */
    long highest(Edge edge) {
        return direction == Direction.FORWARD ? last(edge) : turned(begin(edge));
    }

    /** The mark that the edge itself gives to whatever crosses it. */
    long given(Edge edge) {
        return direction == Direction.FORWARD ? begin(edge) : turned(last(edge));
    }

    /** The mark of an instant, or the instant of a mark. */
    long turn(long instant) {
        return direction == Direction.FORWARD ? instant : turned(instant);
    }

    private long begin(Edge edge) {
        return isStrict() ? edge.begin().late() : edge.begin().early();
    }

    private long last(Edge edge) {
        return isStrict() ? edge.lastCrossing().early() : edge.lastCrossing().late();
    }

    private boolean isStrict() {
        return weakest == Certainty.CERTAIN;
    }

    // the complement reverses the order of all instants and, unlike the negative, has one for Long.MIN_VALUE
    private static long turned(long instant) {
        return ~instant;
    }
}
