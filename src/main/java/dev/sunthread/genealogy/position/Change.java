package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import org.jspecify.annotations.Nullable;

/** A recorded change of what is loaded at a position. */
public sealed interface Change permits Change.Charge, Change.Discharge {

    Moment at();

    @Nullable
    TraceRef lot();

    long entry();

    /** A lot or container put on the position; the item is null where the record doesn't tell it. */
    record Charge(TraceRef lot, @Nullable Long item, Moment at, long entry) implements Change {}

    /** Whatever was on the position taken off; the lot is null where none was named. */
    record Discharge(@Nullable TraceRef lot, Moment at, long entry) implements Change {

        /** Whether the record says that something else came off than this lot. */
        boolean namesOtherThan(TraceRef loaded) {
            return lot != null && !lot.equals(loaded);
        }
    }

    /**
     * Whether the one is known to come first. The records of a position are read off one clock, so their order is
     * known even where their moments overlap; it isn't where one moment lies within the other. At one and the same
     * moment what comes off makes room for what goes on, unless it may be the same lot.
     */
    default boolean precedes(Change other) {
        if (at().equals(other.at())) {
            return this instanceof Discharge off && other instanceof Charge on && off.namesOtherThan(on.lot());
        }
        return at().startsAndEndsBefore(other.at());
    }

    default boolean surelyLiesBetween(Change first, Change last) {
        return first.precedes(this) && precedes(last);
    }

    default boolean mayLieBetween(Change first, Change last) {
        return !precedes(first) && !last.precedes(this);
    }
}
