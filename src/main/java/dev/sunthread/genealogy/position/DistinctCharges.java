package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.position.Change.Charge;
import dev.sunthread.genealogy.position.Change.Discharge;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/** Takes a lot that was charged again with nothing recorded between as one charge that goes on. */
final class DistinctCharges {

    private DistinctCharges() {}

    static Chronology<Charge> of(Collection<Charge> charges, Chronology<Discharge> discharges) {
        Chronology<Charge> all = new Chronology<>(onceEach(charges));
        return new Chronology<>(all.all().stream()
                .filter(charge -> !repeats(all, discharges, charge))
                .toList());
    }

    private static Collection<Charge> onceEach(Collection<Charge> charges) {
        return charges.stream()
                .collect(Collectors.toMap(
                        charge -> Arrays.asList(charge.lot(), charge.item(), charge.at(), charge.unproven()),
                        charge -> charge,
                        (one, other) -> one.entry() <= other.entry() ? one : other))
                .values();
    }

    private static boolean repeats(Chronology<Charge> all, Chronology<Discharge> discharges, Charge charge) {
        List<Charge> before = all.lastBefore(charge);
        return before.size() == 1
                && before.get(0).precedes(charge)
                && before.get(0).lot().equals(charge.lot())
                && Objects.equals(before.get(0).item(), charge.item())
                && discharges.mayLieBetween(before.get(0), charge).isEmpty();
    }
}
