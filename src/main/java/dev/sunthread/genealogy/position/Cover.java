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
import java.util.stream.Stream;
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
    private final List<Change> unproven;
    private long mostUncertain;

    Cover(Collection<Charge> charges, Collection<Discharge> discharges, Collection<Doubt> doubts) {
        this.doubts = doubts;
        charges.forEach(charge -> this.charges
                .computeIfAbsent(told(charge), any -> new ArrayList<>())
                .add(charge));
        List<Discharge> emptying = discharges.stream()
                .filter(discharge -> charges.stream().noneMatch(charge -> makesRoomFor(discharge, charge)))
                .toList();
        unproven = Stream.<Change>concat(charges.stream(), emptying.stream())
                .filter(change -> change.unproven() != null)
                .toList();
        emptying.stream()
                .filter(discharge -> discharge.unproven() == null)
                .forEach(discharge -> off.put(told(discharge), discharge.at()));
        off.forEach((told, at) -> mostUncertain = Math.max(mostUncertain, told - at.early()));
    }

    boolean surelyHeld(Use use) {
        Map.Entry<Long, List<Charge>> charged = lastBefore(use.at());
        return charged != null
                && charged.getValue().stream().allMatch(charge -> charge.item() == null || charge.item() == use.item())
                && off.subMap(charged.getKey(), true, use.at().late() + mostUncertain, true).values().stream()
                        .noneMatch(taken -> taken.early() <= use.at().late())
                && unproven.stream().noneMatch(change -> mayHaveEmptied(change, charged.getValue(), use))
                && doubts.stream()
                        .noneMatch(doubt ->
                                charged.getValue().stream().anyMatch(charge -> doubt.mayEmpty(charge.at(), use.at())));
    }

    // in a spell of times that are not proven nothing has an order
    private static boolean mayHaveEmptied(Change change, List<Charge> on, Use use) {
        boolean mayBeBetween = !use.at().startsAndEndsBefore(change.at())
                && on.stream().noneMatch(change::precedes)
                && !(change instanceof Charge charge && on.contains(charge));
        return mayBeBetween
                && !(change instanceof Charge charge && (charge.item() == null || charge.item() == use.item()));
    }

    private Map.@Nullable Entry<Long, List<Charge>> lastBefore(Moment use) {
        Map.Entry<Long, List<Charge>> charged = charges.lowerEntry(use.late());
        while (charged != null
                && charged.getValue().stream().anyMatch(charge -> charge.at().early() >= use.early())) {
            charged = charges.lowerEntry(charged.getKey());
        }
        return charged;
    }

    private static long told(Change change) {
        Long unproven = change.unproven();
        Moment at = change.at();
        return unproven != null ? unproven : at.early() + (at.late() - at.early()) / 2;
    }

    private static boolean makesRoomFor(Discharge discharge, Charge charge) {
        return discharge.isToldAtOnceWith(charge) && !charge.lot().equals(discharge.lot());
    }
}
