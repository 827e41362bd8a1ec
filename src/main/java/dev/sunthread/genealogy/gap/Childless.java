package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.demand.UnitDemand;
import dev.sunthread.genealogy.records.SignRecords;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The parents that may lack a child, found for a whole item at once: most units have no place for one, or have all. */
public final class Childless {

    private final SignRecords records;
    private final Definitions definitions;
    private final Signs signs;
    private final Map<Long, Set<Long>> known = new HashMap<>();

    public Childless(SignRecords records, Definitions definitions, Signs signs) {
        this.records = records;
        this.definitions = definitions;
        this.signs = signs;
    }

    List<TraceRef> among(Collection<TraceRef> units) {
        signs.learn(units);
        definitions.learn(units.stream().map(unit -> signs.of(unit).item()).toList());
        return units.stream()
                .filter(unit -> ofItem(signs.of(unit).item()).contains(unit.id()))
                .toList();
    }

    private Set<Long> ofItem(long item) {
        return known.computeIfAbsent(item, any -> {
            List<UnitDemand> demands = new UnitDemands(item, definitions.routes(item), definitions.structures(item))
                    .ofChildren()
                    .distinct()
                    .toList();
            return demands.isEmpty() ? Set.of() : records.thatMayLack(demands);
        });
    }
}
