package dev.sunthread.web.unit;

import dev.sunthread.holds.Holds;
import dev.sunthread.inbox.Findings;
import dev.sunthread.kernel.Table;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.kernel.UnitId;
import java.util.List;
import org.springframework.stereotype.Service;

/** Gathers what several modules know of one unit at a cut-off. */
@Service
class UnitPages {

    private final Holds holds;
    private final Findings findings;
    private final UnitReading reading;
    private final AsBuiltViews built;
    private final Timeline timeline;

    UnitPages(Holds holds, Findings findings, UnitReading reading, AsBuiltViews built, Timeline timeline) {
        this.holds = holds;
        this.findings = findings;
        this.reading = reading;
        this.built = built;
        this.timeline = timeline;
    }

    UnitPage read(long unit, UnitId id, UnitView view, long cutoff) {
        TraceRef ref = TraceRef.unit(unit);
        List<Shipped> shipments = reading.shipments(unit, cutoff);
        String[] item = reading.levelAndName(unit, cutoff);
        List<Parent> parents = reading.parents(unit, cutoff);
        long outermost =
                parents.isEmpty() ? unit : parents.get(parents.size() - 1).unit();
        return new UnitPage(
                id,
                item[0],
                item[1],
                reading.place(outermost, cutoff),
                holds.on(ref),
                findings.touching(List.of(ref), cutoff),
                parents,
                built.of(unit, id, view.built(), shipments, cutoff),
                reading.uses(unit, cutoff),
                timeline.of(unit, view.happenings(), cutoff),
                shipments);
    }

    List<Table<?>> tables(long unit, UnitId id, UnitView view, long cutoff) {
        return List.of(
                UnitTables.happenings("timeline", () -> timeline.all(unit, cutoff)),
                UnitTables.uses(() -> reading.uses(unit, cutoff)),
                UnitTables.built(() -> built.of(unit, id, view.built(), reading.shipments(unit, cutoff), cutoff)));
    }
}
