package dev.sunthread.genealogy.records;

import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import org.jspecify.annotations.Nullable;

/** The recorded fact that a child was taken out of a parent; the position is null where none was named. */
public record Removal(
        long entry,
        TraceRef child,
        TraceRef parent,
        @Nullable String position,
        Moment at) {

    /** Whether it is of the same child, parent and position; a position that isn't named can be any. */
    public boolean isOf(Installation installation) {
        return child.equals(installation.child())
                && parent.equals(installation.parent())
                && mayBeOne(position, installation.position());
    }

    public boolean isOfSamePlaceAs(Removal other) {
        return child.equals(other.child) && parent.equals(other.parent) && mayBeOne(position, other.position);
    }

    private static boolean mayBeOne(@Nullable String a, @Nullable String b) {
        return a == null || b == null || a.equals(b);
    }
}
