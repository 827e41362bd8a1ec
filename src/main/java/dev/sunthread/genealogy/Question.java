package dev.sunthread.genealogy;

import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.Moment;

/**
 * What a trace asks of the stays along a path: nothing ({@link #EVER}), or that each covers one instant. Matter taken out
 * of a unit is where it went though what it came through has left, so stays before that need not. Every answer
 * at an instant is part of the answer to {@link #EVER}.
 *
 * @param instant asked about, in microseconds since 1970-01-01T00:00Z
 * @param last the last that it can have been, if it is known no better
 */
public record Question(boolean isEver, long instant, long last) {

    /** Did it ever reach? */
    public static final Question EVER = new Question(true, Long.MAX_VALUE, Long.MAX_VALUE);

    /** Is it there still? Asked at the open end of time, so that only stays without end count. */
    public static final Question NOW = at(Long.MAX_VALUE);

    /** Was it there at this instant, in microseconds since 1970-01-01T00:00Z? */
    public static Question at(long instant) {
        return new Question(false, instant, instant);
    }

    /** Was it there at an instant that is known no better? */
    public static Question at(Moment instant) {
        return new Question(false, instant.early(), instant.late());
    }

    /** Whether no uncertainty can keep the stay from covering the instant. */
    public boolean surelyCovers(Edge edge) {
        return covers(edge.begin().late(), edge.stayEnd().early(), instant, last);
    }

    public boolean possiblyCovers(Edge edge) {
        return covers(edge.begin().early(), edge.stayEnd().late(), last, instant);
    }

    private boolean covers(long begin, long end, long begunBy, long lastsUntil) {
        boolean goesOn = end == Long.MAX_VALUE || lastsUntil < end;
        return isEver || begin <= begunBy && goesOn;
    }
}
