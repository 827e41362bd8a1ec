package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.position.Change.Charge;
import dev.sunthread.genealogy.position.Change.Discharge;
import dev.sunthread.genealogy.walk.Moment;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * When the records of a position show that something was loaded: from a charge to the first discharge behind it, in the
 * order in which the clock of the position told them. At one and the same moment what comes off makes room for what goes
 * on, unless it is the same lot; of several that went on then any may have been the one.
 */
final class Cover {

    private final NavigableMap<Long, List<Charge>> charges = new TreeMap<>();
    private final NavigableMap<Long, Moment> off = new TreeMap<>();
    private final Collection<Doubt> doubts;
    private long mostUncertain;

    Cover(Collection<Charge> charges, Collection<Discharge> discharges, Collection<Doubt> doubts) {
        this.doubts = doubts;
        charges.forEach(charge -> this.charges
                .computeIfAbsent(told(charge.at()), any -> new ArrayList<>())
                .add(charge));
        discharges.stream()
                .filter(discharge -> charges.stream().noneMatch(charge -> makesRoomFor(discharge, charge)))
                .forEach(discharge -> off.put(told(discharge.at()), discharge.at()));
        off.forEach((told, at) -> mostUncertain = Math.max(mostUncertain, told - at.early()));
    }

    boolean surelyHeld(Use use) {
        Map.Entry<Long, List<Charge>> charged = lastBefore(use.at());
        return charged != null
                && charged.getValue().stream().allMatch(charge -> charge.item() == null || charge.item() == use.item())
                && off.subMap(charged.getKey(), true, use.at().late() + mostUncertain, true).values().stream()
                        .noneMatch(taken -> taken.early() <= use.at().late())
                && doubts.stream()
                        .noneMatch(doubt ->
                                charged.getValue().stream().anyMatch(charge -> doubt.mayEmpty(charge.at(), use.at())));
    }

    private Map.@Nullable Entry<Long, List<Charge>> lastBefore(Moment use) {
        Map.Entry<Long, List<Charge>> charged = charges.lowerEntry(use.late());
        while (charged != null
                && charged.getValue().stream().anyMatch(charge -> charge.at().early() >= use.early())) {
            charged = charges.lowerEntry(charged.getKey());
        }
        return charged;
    }

    private static long told(Moment at) {
        return at.early() + (at.late() - at.early()) / 2;
    }

    private static boolean makesRoomFor(Discharge discharge, Charge charge) {
        return discharge.at().equals(charge.at()) && !charge.lot().equals(discharge.lot());
    }
}
