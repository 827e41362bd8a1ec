package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.records.Records;
import dev.sunthread.kernel.Measures;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The items that a lot of no recorded origin may be of before it became what it is: its own, an approved alternate
 * either way, what its item was made of on record, and whatever a position that mixes held. Of an item that no formula
 * and no record tells how it comes about it may be any. It may have been regraded from any that is measured as it is.
 */
public final class Sources {

    private final Records records;
    private final Set<Long> mixed;
    private @Nullable Map<Long, Set<Long>> madeOf;
    private @Nullable Set<Long> any;
    private @Nullable Map<Long, String> units;

    public Sources(Records records) {
        this.records = records;
        this.mixed = records.lots().itemsMixed();
    }

    /** As {@link #of}, and what may have been regraded, or mixed, into one of those by a record that is lost. */
    Set<Long> withRegraded(Collection<Long> items) {
        Set<Long> all = of(items);
        Set<String> into =
                all.stream().map(this::unit).flatMap(Optional::stream).collect(Collectors.toSet());
        any().stream()
                .filter(item ->
                        unit(item).stream().anyMatch(unit -> into.stream().anyMatch(one -> mayBecome(unit, one))))
                .forEach(all::add);
        return all;
    }

    // a regrade leaves the measure as it is, and what is weighed may be mixed with what is measured by volume
    private static boolean mayBecome(String unit, String other) {
        return Measures.areOfOneDimension(unit, other) || isPoured(unit) && isPoured(other);
    }

    private static boolean isPoured(String unit) {
        return Measures.areOfOneDimension(unit, "g") || Measures.areOfOneDimension(unit, "l");
    }

    private Optional<String> unit(long item) {
        if (units == null) {
            units = records.lots().unitsOfItems();
        }
        return Optional.ofNullable(units.get(item));
    }

    /** The sources of something of these items; of anything, if nothing tells of which it is. */
    public Set<Long> of(Collection<Long> items) {
        if (items.isEmpty()) {
            return new HashSet<>(any());
        }
        Set<Long> all = new HashSet<>();
        Deque<Long> open = new ArrayDeque<>(items);
        open.addAll(mixed);
        while (!open.isEmpty()) {
            long item = open.pop();
            if (all.add(item)) {
                open.addAll(records.demands().alternatesOf(Set.of(item)));
                open.addAll(before(item));
            }
        }
        return all;
    }

    // what its formula demands is looked for wherever it is a candidate
    private Set<Long> before(long item) {
        if (madeOf == null) {
            madeOf = records.lots().madeOf();
        }
        Set<Long> told = madeOf.get(item);
        boolean hasFormula = !records.demands().componentsOf(Set.of(item)).isEmpty();
        return told != null ? told : hasFormula ? Set.of() : any();
    }

    private Set<Long> any() {
        if (any == null) {
            any = records.lots().items();
        }
        return any;
    }
}
