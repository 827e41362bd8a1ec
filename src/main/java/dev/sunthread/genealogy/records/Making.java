package dev.sunthread.genealogy.records;

import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import org.jspecify.annotations.Nullable;

/**
 * The recorded fact that a lot was made, or a container filled, from something else.
 *
 * @param from the lot or container it came from, or the unit it was recovered from
 * @param lot the lot that {@code from} is of, where it is a container and the record tells it
 * @param way how it was made, in the words of reasons: blended, split, filled, recovered and so on
 */
public record Making(long entry, TraceRef from, @Nullable Long lot, TraceRef to, String way, Moment at) {

    private static final String LABELLED = "labelled";

    /** That a container was named with a lot until then, though no record fills it with that lot before. */
    public static Making labelled(long entry, long lot, TraceRef container, Moment last) {
        return new Making(entry, TraceRef.lot(lot), lot, container, LABELLED, last);
    }

    /** Whether no filling is recorded, only that the container was named with the lot. */
    public boolean isByLabel() {
        return way.equals(LABELLED);
    }
}
