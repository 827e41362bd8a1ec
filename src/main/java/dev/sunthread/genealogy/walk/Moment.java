package dev.sunthread.genealogy.walk;

/**
 * A moment known to lie between two instants, both possible, in microseconds since 1970-01-01T00:00Z. Open ends are
 * {@link #SINCE_EVER} and {@link #NEVER}; arithmetic stops at them and does not wrap round.
 */
public record Moment(long early, long late) {

    /** The open end on the left: before every recorded moment. */
    public static final Moment SINCE_EVER = at(Long.MIN_VALUE);

    /** The open end on the right: a stay that ends here has no end. */
    public static final Moment NEVER = at(Long.MAX_VALUE);

    /** No station tells two things that are alike within so many microseconds: told again so soon, it was sent twice. */
    public static final long TOLD_TWICE = 2_000_000;

    public Moment {
        if (early > late) {
            throw new IllegalArgumentException("a moment cannot start at %d and end at %d".formatted(early, late));
        }
    }

    public static Moment at(long instant) {
        return new Moment(instant, instant);
    }

    /** The moment that a clock told as {@code instant} when it was off by at most {@code uncertainty}. */
    public static Moment within(long instant, long uncertainty) {
        return at(instant).widened(uncertainty);
    }

    /** This moment and {@code uncertainty} to both sides; open ends stay open. */
    public Moment widened(long uncertainty) {
        return new Moment(minus(early, uncertainty), plus(late, uncertainty));
    }

    /** The last microsecond before this moment; open ends stay open. */
    public Moment justBefore() {
        return new Moment(minus(early, 1), minus(late, 1));
    }

    /** The later of the two moments, whichever it is. */
    public Moment orLater(Moment other) {
        return new Moment(Math.max(early, other.early), Math.max(late, other.late));
    }

    /** Whether it can be every instant that the other can be. */
    public boolean includes(Moment other) {
        return early <= other.early && other.late <= late;
    }

    /** Whether both can be at one instant. */
    public boolean overlaps(Moment other) {
        return early <= other.late && other.early <= late;
    }

    /** The instants that both can be, which overlap. */
    public Moment within(Moment other) {
        return new Moment(Math.max(early, other.early), Math.min(late, other.late));
    }

    /** From the earlier begin of the two to the later end. */
    public Moment spanning(Moment other) {
        return new Moment(Math.min(early, other.early), Math.max(late, other.late));
    }

    /** Whether every instant this can be lies before every instant the other can be; a tie is not before. */
    public boolean surelyBefore(Moment other) {
        return late < other.early;
    }

    /** Whether this comes first if one clock, wrong by one amount, told both moments. */
    public boolean startsAndEndsBefore(Moment other) {
        return early < other.early && late < other.late;
    }

    private static long minus(long instant, long step) {
        if (isOpen(instant)) {
            return instant;
        }
        return instant < Long.MIN_VALUE + step ? Long.MIN_VALUE : instant - step;
    }

    private static long plus(long instant, long step) {
        if (isOpen(instant)) {
            return instant;
        }
        return instant > Long.MAX_VALUE - step ? Long.MAX_VALUE : instant + step;
    }

    private static boolean isOpen(long instant) {
        return instant == Long.MIN_VALUE || instant == Long.MAX_VALUE;
    }
}
