package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.reach.Containment;
import dev.sunthread.genealogy.reach.Readings;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.records.PlacementRecords;
import dev.sunthread.genealogy.records.Removal;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Runs that went with another one over the same carrier: what lay on it in one, and was loaded without a record, lies
 * on it in the others, unless a record tells that everything was taken off between them.
 */
final class Trays {

    private final Readings readings;
    private final Containment containment;
    private final PlacementRecords placements;
    private final Map<TraceRef, List<Removal>> emptyings = new HashMap<>();

    Trays(Readings readings, Containment containment, PlacementRecords placements) {
        this.readings = readings;
        this.containment = containment;
        this.placements = placements;
    }

    /** The other runs that what was on a carrier of this one may have been in too. */
    Stream<Happening> alongWith(Happening run) {
        return under(run.carriers()).stream()
                .flatMap(carrier -> readings.naming(around(carrier)).stream()
                        .filter(other -> other.node().kind() == TraceKind.CURE_RUN)
                        .filter(other -> !other.node().equals(run.node()) && !isEmptiedBetween(carrier, run, other)))
                .distinct();
    }

    private boolean isEmptiedBetween(TraceRef carrier, Happening one, Happening other) {
        return emptyings.computeIfAbsent(carrier, this::read).stream()
                .anyMatch(all -> liesBetween(one, all, other) || liesBetween(other, all, one));
    }

    private static boolean liesBetween(Happening first, Removal all, Happening next) {
        return first.end().surelyBefore(all.at()) && all.at().surelyBefore(next.start());
    }

    private List<Removal> read(TraceRef carrier) {
        return placements.carriedBy(Set.of(carrier)).removals().stream()
                .filter(off -> off.parent().equals(carrier) && off.child().equals(carrier))
                .toList();
    }

    /** These carriers and all that ever were on them. */
    private Set<TraceRef> under(Collection<TraceRef> carriers) {
        Set<TraceRef> all = new HashSet<>();
        Deque<TraceRef> open = new ArrayDeque<>(carriers);
        while (!open.isEmpty()) {
            TraceRef next = open.pop();
            if (next.kind() == TraceKind.CARRIER && all.add(next)) {
                containment.loads().of(next).stream().map(Edge::from).forEach(open::add);
            }
        }
        return all;
    }

    /** This carrier and all that it ever was on. */
    private Set<TraceRef> around(TraceRef carrier) {
        return containment.carriersOf(Set.of(carrier));
    }
}
