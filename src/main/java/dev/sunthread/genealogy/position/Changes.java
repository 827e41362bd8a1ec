package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.position.Change.Charge;
import dev.sunthread.genealogy.position.Change.Discharge;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** All recorded changes of what is loaded at one position. */
public final class Changes {

    private final List<Charge> charges;
    private final List<Discharge> discharges;
    private final List<Doubt> doubts;
    private final Optional<Set<Long>> items;

    public Changes(List<Charge> charges, List<Discharge> discharges) {
        this(charges, discharges, List.of());
    }

    /** The same with what may have happened there besides. */
    public Changes(List<Charge> charges, List<Discharge> discharges, List<Doubt> doubts) {
        this.charges = List.copyOf(charges);
        this.discharges = List.copyOf(discharges);
        this.doubts = List.copyOf(doubts);
        this.items = itemsOf(charges, discharges, doubts);
    }

    /** The same where some of the entries may be taken back, each with the line that does it: what they tell may be so or not. */
    public static Changes of(
            List<Charge> charges, List<Discharge> discharges, Map<Long, Long> takenBack, List<Doubt> doubts) {
        if (takenBack.isEmpty()) {
            return new Changes(charges, discharges, doubts);
        }
        List<Doubt> all = new ArrayList<>(doubts);
        charges.stream()
                .filter(charge -> takenBack.containsKey(charge.entry()))
                .map(charge ->
                        new Doubt(charge.lot(), charge.item(), true, true, charge.at(), lineOf(charge, takenBack)))
                .forEach(all::add);
        discharges.stream()
                .filter(discharge -> takenBack.containsKey(discharge.entry()))
                .map(discharge ->
                        new Doubt(discharge.lot(), null, false, true, discharge.at(), lineOf(discharge, takenBack)))
                .forEach(all::add);
        return new Changes(
                charges.stream()
                        .filter(charge -> !takenBack.containsKey(charge.entry()))
                        .toList(),
                discharges.stream()
                        .filter(discharge -> !takenBack.containsKey(discharge.entry()))
                        .toList(),
                all);
    }

    private static long lineOf(Change change, Map<Long, Long> takenBack) {
        return takenBack.getOrDefault(change.entry(), 0L);
    }

    public List<Charge> charges() {
        return charges;
    }

    public List<Discharge> discharges() {
        return discharges;
    }

    public List<Doubt> doubts() {
        return doubts;
    }

    /** The items that were ever loaded; empty if any item may have been, for the records leave one open. */
    public Optional<Set<Long>> items() {
        return items;
    }

    public boolean mayHaveHeld(long item) {
        return items.isEmpty() || items.get().contains(item);
    }

    // uses move the ends of a loading, not its item
    private static Optional<Set<Long>> itemsOf(List<Charge> charges, List<Discharge> discharges, List<Doubt> doubts) {
        Set<Long> items = new HashSet<>();
        for (Doubt doubt : doubts) {
            if (doubt.lot() != null && doubt.item() == null) {
                return Optional.empty();
            }
            if (doubt.item() != null) {
                items.add(doubt.item());
            }
        }
        for (Loading loading : new Loadings("", charges, discharges, new UseMoments(List.of()), List.of()).all()) {
            if (loading.item() == null) {
                return Optional.empty();
            }
            items.add(loading.item());
        }
        return Optional.of(items);
    }
}
