package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.position.Change.Charge;
import dev.sunthread.genealogy.position.Change.Discharge;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** All recorded changes of what is loaded at one position. */
public record Changes(List<Charge> charges, List<Discharge> discharges) {

    /** The items that were ever loaded; empty if any item may have been, for the records leave one open. */
    public Optional<Set<Long>> items() {
        Set<Long> items = new HashSet<>();
        // uses move the ends of a loading, not its item
        for (Loading loading : new Loadings("", charges, discharges, new UseMoments(List.of())).all()) {
            if (loading.item() == null) {
                return Optional.empty();
            }
            items.add(loading.item());
        }
        return Optional.of(items);
    }

    public boolean mayHaveHeld(long item) {
        return items().map(known -> known.contains(item)).orElse(true);
    }
}
