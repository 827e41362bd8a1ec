package dev.sunthread.genealogy.reach;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.walk.Edge;

/**
 * A time for which all stays on a way from one thing to another last together: possibly from {@code from} until
 * before {@code to}, surely from {@code sureFrom} until before {@code sureTo} if all of them are certain.
 */
record Overlap(long from, long to, long sureFrom, long sureTo, boolean certain) {

    static final Overlap WHOLE = new Overlap(Long.MIN_VALUE, Long.MAX_VALUE, Long.MIN_VALUE, Long.MAX_VALUE, true);

    static final Overlap POSSIBLY_WHOLE =
            new Overlap(Long.MIN_VALUE, Long.MAX_VALUE, Long.MIN_VALUE, Long.MAX_VALUE, false);

    Overlap during(Edge stay) {
        return new Overlap(
                Math.max(from, stay.begin().early()),
                Math.min(to, stay.stayEnd().late()),
                Math.max(sureFrom, stay.begin().late()),
                Math.min(sureTo, stay.stayEnd().early()),
                certain && stay.certainty() == Certainty.CERTAIN);
    }

    /** Whether both may have been at one moment; at the instant of its end a stay is over. */
    boolean mayBeIn(Happening happening) {
        return from < to
                && from <= happening.end().late()
                && to > happening.start().early();
    }

    /** Whether both surely were; what began at the last instant of the happening may have come after it. */
    boolean surelyIsIn(Happening happening) {
        return certain
                && sureFrom < sureTo
                && sureFrom < happening.end().early()
                && sureTo > happening.start().late();
    }

    boolean includes(Overlap other) {
        return from <= other.from
                && to >= other.to
                && sureFrom <= other.sureFrom
                && sureTo >= other.sureTo
                && (certain || !other.certain);
    }
}
