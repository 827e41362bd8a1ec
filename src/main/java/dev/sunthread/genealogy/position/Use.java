package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import org.jspecify.annotations.Nullable;

/** One use of an item at a step, from its early start to its late end; the lot is null where none was scanned. */
public record Use(Moment at, long item, @Nullable TraceRef scanned) {}
