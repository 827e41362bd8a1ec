package dev.sunthread.genealogy.reach;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.position.Candidate;
import dev.sunthread.genealogy.position.Change;
import dev.sunthread.genealogy.position.Changes;
import dev.sunthread.genealogy.position.PositionTimeline;
import dev.sunthread.genealogy.position.UseSources;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.records.RecordedUse;
import dev.sunthread.genealogy.records.Records;
import dev.sunthread.genealogy.records.StationPosition;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.genealogy.walk.Reason;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Edges from lots and containers to the units that a use of them reached, and to the lots that a position's content
 * went on as. Where the container was not scanned any container of the lot may have been the one.
 */
public final class MaterialEdges {

    private final Records records;
    private final Readings readings;
    private final Reach reach;
    private final Contents contents;
    private final FirstSigns signs;

    public MaterialEdges(Records records, Readings readings, Reach reach, Contents contents) {
        this.records = records;
        this.readings = readings;
        this.reach = reach;
        this.contents = contents;
        this.signs = new FirstSigns(records.lots());
    }

    /** Edges out of these lots, containers and contents of lots, and some more. */
    public Stream<Acting> outOf(Collection<TraceRef> material) {
        List<TraceRef> named = material.stream()
                .map(node -> node.kind() == TraceKind.LOT_CONTENT ? TraceRef.lot(node.id()) : node)
                .distinct()
                .toList();
        if (named.isEmpty()) {
            return Stream.empty();
        }
        List<StationPosition> held = records.uses().positionsThatHeld(ids(named, TraceKind.LOT));
        return edges(records.uses().thatMayHaveTaken(named, held, itemsHeldAt(held)));
    }

    /** Edges from what these happenings took in. */
    public Stream<Acting> ofUsesIn(Collection<Happening> happenings) {
        return edges(readings.usesIn(happenings));
    }

    /** Edges into these lots from positions that were unloaded as them. */
    public Stream<Edge> intoLots(Collection<Long> lots) {
        return lots.isEmpty()
                ? Stream.empty()
                : edges(records.uses().unloadedInto(lots)).map(Acting::edge);
    }

    /**
     * Whether some lot of its item surely was there to be used, whichever it was: one that was scanned, unless it came off
     * meanwhile, or what was loaded at the position. What names no position need not have been loaded at all.
     */
    public boolean isCovered(RecordedUse use) {
        if (use.item() == null || use.lot() == null && use.container() != null) {
            return true;
        }
        if (use.lot() != null) {
            return loadedWith(TraceRef.lot(use.lot()), use).noneMatch(timeline -> timeline.ranOutDuring(use.at()));
        }
        return use.position() != null
                && positions(use)
                        .map(records.uses()::timeline)
                        .anyMatch(timeline -> timeline.surelyHeldSome(use.use()));
    }

    private Stream<PositionTimeline> loadedWith(TraceRef lot, RecordedUse use) {
        return positions(use)
                .map(records.uses()::timeline)
                .filter(timeline -> use.position() != null || timeline.mayHaveHeld(lot, use.at()));
    }

    // a use that names no position can only have drawn from one that held its item
    private Optional<Set<Long>> itemsHeldAt(List<StationPosition> held) {
        Set<Long> items = new HashSet<>();
        for (StationPosition position : held) {
            Optional<Set<Long>> there = records.uses().changes(position).items();
            if (there.isEmpty()) {
                return Optional.empty();
            }
            items.addAll(there.get());
        }
        return Optional.of(items);
    }

    private Stream<Acting> edges(List<RecordedUse> uses) {
        Map<TraceRef, Happening> steps = readings.stepsOf(uses);
        reach.learn(steps.values());
        contents.learn(uses.stream()
                .map(RecordedUse::lot)
                .filter(Objects::nonNull)
                .map(TraceRef::lot)
                .toList());
        Map<RecordedUse, List<Candidate>> candidates =
                uses.stream().distinct().collect(Collectors.toMap(use -> use, this::candidates));
        signs.learn(candidates.values().stream().flatMap(List::stream).toList());
        return uses.stream().flatMap(use -> edges(use, candidates.getOrDefault(use, List.of()), steps));
    }

    private Stream<Acting> edges(RecordedUse use, List<Candidate> candidates, Map<TraceRef, Happening> steps) {
        Happening step = use.into() != null ? null : steps.get(use.step());
        Stream<Edge> edges = use.into() != null
                ? edgesInto(use, candidates, Map.of(TraceRef.lot(use.into()), Certainty.CERTAIN))
                : step == null ? Stream.empty() : edgesInto(use, candidates, reach.of(step));
        return edges.map(edge -> step == null ? Acting.only(edge) : reach.acting(step, edge));
    }

    private Stream<Edge> edgesInto(RecordedUse use, List<Candidate> candidates, Map<TraceRef, Certainty> targets) {
        List<Source> sources = Stream.concat(
                        candidates.stream()
                                .filter(candidate -> signs.mayBeThere(candidate, use.at()))
                                .flatMap(candidate -> sources(use, candidate)),
                        ofUnknownLot(use))
                .toList();
        return targets.entrySet().stream()
                .flatMap(target -> sources.stream()
                        .map(source -> Edge.atOnce(
                                        source.node(), target.getKey(), source.certainty(), use.at(), source.reason())
                                .atMost(target.getValue())));
    }

    private record Source(TraceRef node, Certainty certainty, Reason reason) {

        Source of(TraceRef other) {
            return new Source(other, certainty, reason);
        }

        Source atMostPossible() {
            return new Source(node, Certainty.weakest(certainty, Certainty.POSSIBLE), reason);
        }
    }

    private Stream<Source> sources(RecordedUse use, Candidate candidate) {
        Source lot = new Source(candidate.lot(), candidate.certainty(), reason(use, candidate.reason()));
        boolean isScanned = use.lot() != null && candidate.lot().equals(TraceRef.lot(use.lot()));
        if (!isScanned || use.container() == null) {
            return contents.with(candidate.lot()).map(lot::of);
        }
        Source container = lot.of(TraceRef.container(use.container()));
        boolean isChanged = loadedWith(candidate.lot(), use).anyMatch(timeline -> timeline.isChangedDuring(use.at()));
        Stream<Source> leftBehind = contents.with(candidate.lot())
                .filter(node -> !node.equals(candidate.lot()) && wasLoadedSeveralTimes(use, candidate.lot()))
                .map(node -> lot.of(node).atMostPossible());
        return Stream.concat(Stream.of(lot, isChanged ? container.atMostPossible() : container), leftBehind);
    }

    // what another container of the lot left behind goes along too
    private boolean wasLoadedSeveralTimes(RecordedUse use, TraceRef lot) {
        return positions(use).anyMatch(position -> {
            Changes changes = records.uses().changes(position);
            List<Moment> on = changes.charges().stream()
                    .filter(charge -> charge.lot().equals(lot))
                    .map(Change::at)
                    .filter(at -> at.early() <= use.at().late())
                    .toList();
            long scanned = records.uses().timeline(position).firstScanOf(lot);
            boolean cameOff = changes.discharges().stream()
                    .map(Change::at)
                    .filter(off -> off.early() <= use.at().late())
                    .anyMatch(off ->
                            off.late() >= scanned || on.stream().anyMatch(charged -> !off.surelyBefore(charged)));
            return on.size() > 1 || cameOff;
        });
    }

    // the label of a container was scanned, and nothing tells what is in it
    private static Stream<Source> ofUnknownLot(RecordedUse use) {
        return use.container() == null || use.lot() != null
                ? Stream.empty()
                : Stream.of(new Source(
                        TraceRef.container(use.container()),
                        Certainty.CERTAIN,
                        reason(use, Reason.of("scanned", use.entry()))));
    }

    private List<Candidate> candidates(RecordedUse use) {
        if (use.item() == null) {
            return positions(use)
                    .flatMap(position -> records.uses().timeline(position).unloaded(use.use()).stream())
                    .toList();
        }
        List<PositionTimeline> timelines =
                positions(use).map(records.uses()::timeline).toList();
        return use.position() == null
                ? new UseSources(timelines).candidates(use.use())
                : timelines.stream()
                        .flatMap(timeline -> timeline.candidates(use.use()).stream())
                        .toList();
    }

    /** The positions that the use may have drawn from. */
    public Stream<StationPosition> positions(RecordedUse use) {
        Long named = use.position();
        return records.uses().positionsOf(use.station()).stream()
                .filter(position -> named == null
                        ? use.item() == null || records.uses().changes(position).mayHaveHeld(use.item())
                        : position.id() == named);
    }

    private static Reason reason(RecordedUse use, Reason given) {
        return new Reason(given.key(), given.named(), use.entry())
                .with("operation", use.operation())
                .with("station", use.stationCode())
                .with("used", use.ended());
    }

    private static Set<Long> ids(Collection<TraceRef> nodes, TraceKind kind) {
        return nodes.stream()
                .filter(node -> node.kind() == kind)
                .map(TraceRef::id)
                .collect(Collectors.toSet());
    }
}
