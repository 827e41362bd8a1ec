package dev.sunthread.genealogy.reach;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.position.Candidate;
import dev.sunthread.genealogy.records.LotRecords;
import dev.sunthread.genealogy.records.LotSpan;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * From when on there are signs of lots, each read once: before that none of it was in the plant to be used. One of which
 * it is not recorded where it came from may have been there since ever.
 */
final class FirstSigns {

    private final LotRecords records;
    private final Map<TraceRef, Long> known = new HashMap<>();

    FirstSigns(LotRecords records) {
        this.records = records;
    }

    // what is certain needs no sign
    void learn(Collection<Candidate> candidates) {
        List<Long> missing = candidates.stream()
                .filter(candidate -> candidate.certainty() != Certainty.CERTAIN)
                .map(Candidate::lot)
                .filter(lot -> lot.kind() == TraceKind.LOT && !known.containsKey(lot))
                .map(TraceRef::id)
                .distinct()
                .toList();
        if (missing.isEmpty()) {
            return;
        }
        Map<TraceRef, Long> first = new HashMap<>();
        for (LotSpan span : records.spansOf(missing)) {
            first.merge(TraceRef.lot(span.lot()), span.from(), Math::min);
        }
        missing.forEach(lot -> known.put(TraceRef.lot(lot), first.getOrDefault(TraceRef.lot(lot), Long.MIN_VALUE)));
    }

    boolean mayBeThere(Candidate candidate, Moment use) {
        return known.getOrDefault(candidate.lot(), Long.MIN_VALUE) <= use.late();
    }
}
