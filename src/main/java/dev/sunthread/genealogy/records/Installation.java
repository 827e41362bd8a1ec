package dev.sunthread.genealogy.records;

import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import org.jspecify.annotations.Nullable;

/** The recorded fact that a child was put into a parent; the position is null where none was named. */
public record Installation(
        long entry,
        TraceRef child,
        TraceRef parent,
        @Nullable String position,
        Moment at) {}
