package dev.sunthread.genealogy;

import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Edges from lots to the units they went into, from the uses that history tells. */
final class UseEdges {

    private final UseHistory uses;
    private final PositionHistory positions;
    private final Clocks clocks;

    UseEdges(UseHistory uses, PositionHistory positions, Clocks clocks) {
        this.uses = uses;
        this.positions = positions;
        this.clocks = clocks;
    }

    Stream<Edge> outOf(Collection<Long> lots) {
        List<StationPosition> held = uses.positionsThatHeld(lots);
        return uses.thatMayHaveTaken(lots, held, itemsHeldAt(held)).stream()
                .flatMap(this::edges)
                .filter(edge -> lots.contains(edge.from().id()));
    }

    Stream<Edge> into(Collection<Long> units) {
        return uses.thatWentInto(units).stream()
                .flatMap(this::edges)
                .filter(edge -> units.contains(edge.to().id()));
    }

    // a use that names no position can only have drawn from one that held its item
    private Optional<Set<Long>> itemsHeldAt(List<StationPosition> held) {
        Set<Long> items = new HashSet<>();
        for (StationPosition position : held) {
            Optional<Set<Long>> there = positions.changes(position).items();
            if (there.isEmpty()) {
                return Optional.empty();
            }
            items.addAll(there.get());
        }
        return Optional.of(items);
    }

    private Stream<Edge> edges(RecordedUse use) {
        Moment moment = clocks.told(use.station(), use.start(), use.end());
        return candidates(use, moment).stream()
                .flatMap(candidate -> use.units().stream()
                        .map(unit -> Edge.atOnce(
                                candidate.lot(),
                                TraceRef.unit(unit),
                                candidate.certainty(),
                                moment,
                                reason(use, candidate))));
    }

    private List<Candidate> candidates(RecordedUse use, Moment moment) {
        List<StationPosition> station = uses.positions(use.station());
        Long named = use.position();
        if (named == null) {
            List<PositionTimeline> timelines = station.stream()
                    .filter(position -> positions.changes(position).mayHaveHeld(use.item()))
                    .map(positions::timeline)
                    .toList();
            return new UseSources(timelines).candidates(use.at(moment));
        }
        return station.stream()
                .filter(position -> position.id() == named)
                .flatMap(position -> positions.timeline(position).candidates(use.at(moment)).stream())
                .toList();
    }

    private static Reason reason(RecordedUse use, Candidate candidate) {
        Reason given = candidate.reason();
        return new Reason(given.key(), given.named(), use.entry())
                .with("operation", use.operation())
                .with("station", use.stationCode())
                .with("used", use.end());
    }
}
