package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.records.SignRecords;
import dev.sunthread.genealogy.records.UnitSigns;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Signs of units, each read once. */
public final class Signs {

    private final SignRecords records;
    private final Map<TraceRef, UnitSigns> known = new HashMap<>();

    public Signs(SignRecords records) {
        this.records = records;
    }

    public void learn(Collection<TraceRef> units) {
        List<Long> missing = units.stream()
                .filter(unit -> !known.containsKey(unit))
                .map(TraceRef::id)
                .distinct()
                .toList();
        if (!missing.isEmpty()) {
            missing.forEach(unit -> known.put(TraceRef.unit(unit), UnitSigns.none(unit)));
            records.of(missing).forEach(signs -> known.put(signs.node(), signs));
        }
    }

    public UnitSigns of(TraceRef unit) {
        learn(List.of(unit));
        return Objects.requireNonNull(known.get(unit));
    }
}
