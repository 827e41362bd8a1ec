package dev.sunthread.genealogy.edge;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.position.Change;
import dev.sunthread.genealogy.position.Changes;
import dev.sunthread.genealogy.reach.Reach;
import dev.sunthread.genealogy.reach.Readings;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.records.OpenLine;
import dev.sunthread.genealogy.records.RecordedUse;
import dev.sunthread.genealogy.records.Records;
import dev.sunthread.genealogy.records.StationPosition;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.genealogy.walk.Reason;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Edges through kept lines that no person has settled: everything a line names may have come from, or gone into,
 * everything else it names. A line of a position without a unit may change what each use there drew from.
 */
final class LineEdges {

    private final Records records;
    private final Readings readings;
    private final Reach reach;
    private @Nullable List<Edge> all;

    LineEdges(Records records, Readings readings, Reach reach) {
        this.records = records;
        this.readings = readings;
        this.reach = reach;
    }

    Stream<Edge> outOf(Collection<TraceRef> nodes) {
        Set<TraceRef> asked = new HashSet<>(nodes);
        return all().stream().filter(edge -> asked.contains(edge.from()));
    }

    Stream<Edge> into(Collection<TraceRef> nodes) {
        Set<TraceRef> asked = new HashSet<>(nodes);
        return all().stream().filter(edge -> asked.contains(edge.to()));
    }

    private List<Edge> all() {
        if (all == null) {
            all = records.lines().open().stream().flatMap(this::edges).toList();
        }
        return all;
    }

    private Stream<Edge> edges(OpenLine line) {
        Reason reason = Reason.of("kept-line", line.entry());
        Stream<Edge> into = sources(line).stream()
                .map(source -> Edge.during(source, line.node(), Certainty.POSSIBLE, line.from(), line.to(), reason));
        Stream<Edge> outOf = targets(line).stream()
                .map(target -> Edge.during(line.node(), target, Certainty.POSSIBLE, line.from(), Moment.NEVER, reason));
        return Stream.concat(into, outOf);
    }

    private Set<TraceRef> sources(OpenLine line) {
        Set<TraceRef> sources = new TreeSet<>(line.named());
        if (line.named().stream().noneMatch(node -> node.kind() == TraceKind.LOT)) {
            List<StationPosition> positions = records.uses().positions(line.positions());
            Set<Long> items = new HashSet<>();
            for (StationPosition position : positions) {
                Changes changes = records.uses().changes(position);
                changes.charges().forEach(charge -> sources.add(charge.lot()));
                changes.discharges().stream()
                        .map(Change.Discharge::lot)
                        .filter(Objects::nonNull)
                        .forEach(sources::add);
                changes.items().ifPresent(items::addAll);
            }
            records.lots().spansOfItems(items).stream()
                    .filter(span -> items.contains(span.item()))
                    .forEach(span -> sources.add(TraceRef.lot(span.lot())));
        }
        return sources;
    }

    private Set<TraceRef> targets(OpenLine line) {
        Set<TraceRef> units = line.named().stream()
                .filter(node -> node.kind() == TraceKind.UNIT)
                .collect(Collectors.toSet());
        List<Happening> acting = new ArrayList<>();
        if (units.isEmpty() && !line.positions().isEmpty()) {
            readings
                    .of(records.uses().at(line.positions()).stream()
                            .map(RecordedUse::step)
                            .toList())
                    .stream()
                    .filter(step -> step.at().late() >= line.from().early())
                    .forEach(acting::add);
        } else {
            acting.add(new Happening(line.node(), line.entry(), line.from(), line.to(), units, Set.of(), null, null));
        }
        Set<TraceRef> targets = new TreeSet<>(line.named());
        reach.learn(acting);
        acting.forEach(happening -> targets.addAll(reach.of(happening).keySet()));
        return targets;
    }
}
