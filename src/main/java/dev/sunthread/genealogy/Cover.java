package dev.sunthread.genealogy;

import dev.sunthread.genealogy.Change.Charge;
import dev.sunthread.genealogy.Change.Discharge;
import java.util.Collection;
import java.util.Comparator;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * When the records of a position show that something was loaded: from a charge to the first discharge behind it, as
 * its one clock orders them. At one and the same moment what comes off makes room for what goes on.
 */
final class Cover {

    private final NavigableMap<Long, Charge> charges = new TreeMap<>();
    private final TreeSet<Long> off = new TreeSet<>();

    Cover(Collection<Charge> charges, Collection<Discharge> discharges) {
        charges.stream()
                .sorted(Comparator.comparingLong(charge -> charge.at().late()))
                .forEach(charge -> this.charges.put(charge.at().early(), charge));
        discharges.stream()
                .filter(discharge -> charges.stream().noneMatch(charge -> makesRoomFor(discharge, charge)))
                .forEach(discharge -> off.add(discharge.at().early()));
    }

    boolean surelyHeld(Use use) {
        var charged = charges.lowerEntry(use.at().early());
        return charged != null
                && (charged.getValue().item() == null || charged.getValue().item() == use.item())
                && off.subSet(charged.getKey(), true, use.at().late(), true).isEmpty();
    }

    private static boolean makesRoomFor(Discharge discharge, Charge charge) {
        return discharge.at().equals(charge.at()) && !charge.lot().equals(discharge.lot());
    }
}
