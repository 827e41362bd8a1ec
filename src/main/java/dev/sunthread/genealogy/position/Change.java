package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** A recorded change of what is loaded at a position. */
public sealed interface Change permits Change.Charge, Change.Discharge {

    Moment at();

    @Nullable
    TraceRef lot();

    long entry();

    /** The instant that its clock told, where that is not proven and may be any of its spell; else absent. */
    @Nullable
    Long unproven();

    /** A lot or container put on the position; the item is null where the record doesn't tell it. */
    record Charge(
            TraceRef lot,
            @Nullable Long item,
            Moment at,
            long entry,
            @Nullable Long unproven) implements Change {

        public Charge(TraceRef lot, @Nullable Long item, Moment at, long entry) {
            this(lot, item, at, entry, null);
        }
    }

    /** Whatever was on the position taken off; the lot is null where none was named. */
    record Discharge(
            @Nullable TraceRef lot,
            Moment at,
            long entry,
            @Nullable Long unproven) implements Change {

        public Discharge(@Nullable TraceRef lot, Moment at, long entry) {
            this(lot, at, entry, null);
        }

        /** Whether the record says that something else came off than this lot. */
        boolean namesOtherThan(TraceRef loaded) {
            return lot != null && !lot.equals(loaded);
        }
    }

    /**
     * Whether the one is known to come first. The records of a position are read off one clock, so their order is
     * known even where their moments overlap; it isn't where one moment lies within the other, nor in a spell of times
     * that are not proven. At one and the same moment what comes off makes room for what goes on, unless it may be the
     * same lot.
     */
    default boolean precedes(Change other) {
        if (isToldAtOnceWith(other)) {
            return this instanceof Discharge off && other instanceof Charge on && off.namesOtherThan(on.lot());
        }
        return at().startsAndEndsBefore(other.at());
    }

    /** Whether the clock told one and the same moment of both. */
    default boolean isToldAtOnceWith(Change other) {
        return at().equals(other.at()) && Objects.equals(unproven(), other.unproven());
    }

    /** By how much the clock told the other earlier, in microseconds; less than nothing if it told that later. */
    default long toldBehind(Change other) {
        Long mine = unproven();
        Long others = other.unproven();
        return mine != null && others != null
                ? mine - others
                : at().early() - other.at().early();
    }

    default boolean surelyLiesBetween(Change first, Change last) {
        return first.precedes(this) && precedes(last);
    }

    default boolean mayLieBetween(Change first, Change last) {
        return !precedes(first) && !last.precedes(this);
    }
}
