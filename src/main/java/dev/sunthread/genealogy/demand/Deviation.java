package dev.sunthread.genealogy.demand;

import dev.sunthread.kernel.TraceRef;
import org.jspecify.annotations.Nullable;

/** A signed statement that something demanded was not done to a unit, or is not in it or in a lot. */
public record Deviation(
        TraceRef node,
        @Nullable String operation,
        @Nullable String position,
        @Nullable Long item,
        @Nullable RunDemand run) {

    public boolean excuses(TraceRef other, @Nullable String otherOperation, @Nullable String otherPosition) {
        return node.equals(other)
                && (operation == null || otherOperation == null || operation.equals(otherOperation))
                && (position == null || position.equals(otherPosition));
    }
}
