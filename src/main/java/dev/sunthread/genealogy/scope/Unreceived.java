package dev.sunthread.genealogy.scope;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.gap.Sources;
import dev.sunthread.genealogy.history.HistoryRecords;
import dev.sunthread.genealogy.records.Records;
import dev.sunthread.genealogy.records.Unmade;
import dev.sunthread.genealogy.walk.Suspect;
import dev.sunthread.kernel.TraceRef;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Lots of which no record tells where they came from: each may be of any receipt that no record tells either. */
final class Unreceived {

    private final Records records;

    Unreceived(JdbcClient jdbc, long cutoff) {
        this.records = HistoryRecords.at(jdbc, cutoff);
    }

    /** Those that may have been received as one of these items, and be there since the instant or later. */
    List<Suspect> of(Set<Long> items, long since) {
        List<Unmade> unmade = items.isEmpty() ? List.of() : records.lots().unmade();
        if (unmade.isEmpty()) {
            return List.of();
        }
        Sources sources = new Sources(records);
        return unmade.stream()
                .filter(lot -> lot.first().late() >= since)
                .filter(lot -> !Collections.disjoint(items, receivedAs(sources.of(lot.items()))))
                .map(lot -> new Suspect(TraceRef.lot(lot.lot()), Long.MIN_VALUE, Certainty.UNPROVEN))
                .toList();
    }

    private Set<Long> receivedAs(Set<Long> sources) {
        Set<Long> all = new HashSet<>(sources);
        all.addAll(records.demands().allComponentsOf(sources));
        return all;
    }
}
