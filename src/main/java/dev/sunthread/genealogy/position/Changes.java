package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.position.Change.Charge;
import dev.sunthread.genealogy.position.Change.Discharge;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** All recorded changes of what is loaded at one position. */
public final class Changes {

    private final List<Charge> charges;
    private final List<Discharge> discharges;
    private final Optional<Set<Long>> items;

    public Changes(List<Charge> charges, List<Discharge> discharges) {
        this.charges = List.copyOf(charges);
        this.discharges = List.copyOf(discharges);
        this.items = itemsOf(charges, discharges);
    }

    public List<Charge> charges() {
        return charges;
    }

    public List<Discharge> discharges() {
        return discharges;
    }

    /** The items that were ever loaded; empty if any item may have been, for the records leave one open. */
    public Optional<Set<Long>> items() {
        return items;
    }

    public boolean mayHaveHeld(long item) {
        return items.isEmpty() || items.get().contains(item);
    }

    // uses move the ends of a loading, not its item
    private static Optional<Set<Long>> itemsOf(List<Charge> charges, List<Discharge> discharges) {
        Set<Long> items = new HashSet<>();
        for (Loading loading : new Loadings("", charges, discharges, new UseMoments(List.of())).all()) {
            if (loading.item() == null) {
                return Optional.empty();
            }
            items.add(loading.item());
        }
        return Optional.of(items);
    }
}
