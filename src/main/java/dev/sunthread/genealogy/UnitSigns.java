package dev.sunthread.genealogy;

import dev.sunthread.kernel.TraceRef;
import java.util.List;

/**
 * Signs of one unit: its item, the early end of its first sign in the plant, and when it was shipped, returned and
 * scrapped.
 */
record UnitSigns(long unit, long item, long first, List<Moment> shipped, List<Moment> returned, List<Moment> scrapped) {

    TraceRef node() {
        return TraceRef.unit(unit);
    }
}
