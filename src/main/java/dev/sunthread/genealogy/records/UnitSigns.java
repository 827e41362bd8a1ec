package dev.sunthread.genealogy.records;

import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import java.util.List;
import java.util.stream.Stream;

/**
 * Signs of one unit: its item, the early end of its first sign in the plant, and when it was shipped, returned and
 * scrapped.
 */
public record UnitSigns(
        long unit, long item, long first, List<Moment> shipped, List<Moment> returned, List<Moment> scrapped) {

    /** Of a unit that nothing tells of: it is of no item, and there since ever. */
    public static UnitSigns none(long unit) {
        return new UnitSigns(unit, -1, Long.MIN_VALUE, List.of(), List.of(), List.of());
    }

    /** The same with more returns. */
    public UnitSigns returned(List<Moment> more) {
        List<Moment> all = Stream.concat(returned.stream(), more.stream()).toList();
        return new UnitSigns(unit, item, first, shipped, all, scrapped);
    }

    public TraceRef node() {
        return TraceRef.unit(unit);
    }
}
