package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.position.Untold;
import dev.sunthread.genealogy.reach.MaterialEdges;
import dev.sunthread.genealogy.reach.Readings;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.records.RecordedUse;
import dev.sunthread.genealogy.records.StationPosition;
import dev.sunthread.genealogy.records.UseRecords;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
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
 * What uses lack: the lot, where nothing tells what was loaded; and what a load that no record tells left behind, which
 * went along with later uses at the position and with what was unloaded there.
 */
final class UseLacks {

    private final UseRecords records;
    private final Readings readings;
    private final MaterialEdges material;

    UseLacks(UseRecords records, Readings readings, MaterialEdges material) {
        this.records = records;
        this.readings = readings;
        this.material = material;
    }

    /** What these uses lack. */
    List<Lack> of(Collection<RecordedUse> uses) {
        Map<TraceRef, Happening> steps = readings.stepsOf(uses);
        Set<Lack> lacks = new HashSet<>();
        uses.forEach(use -> where(use, steps).ifPresent(where -> add(lacks, use, where)));
        return List.copyOf(lacks);
    }

    /** What uses in the whole plant lack that something of these items may stand for. */
    List<Lack> ofItems(Collection<Long> items) {
        List<RecordedUse> uses = new ArrayList<>(records.unscanned(items));
        Set<StationPosition> positions = new HashSet<>(records.positions(uses.stream()
                .filter(use -> !material.isCovered(use))
                .map(RecordedUse::position)
                .filter(Objects::nonNull)
                .collect(Collectors.toSet())));
        positions.addAll(records.unloadedOfNoRecord(items));
        if (!positions.isEmpty()) {
            uses.addAll(records.thatMayHaveTaken(Set.of(), positions, Optional.empty()));
        }
        return of(uses.stream().distinct().toList());
    }

    /** What lots lack as which positions were unloaded. */
    List<Lack> ofUnloadings(Collection<Long> lots) {
        return lots.isEmpty() ? List.of() : of(records.unloadedInto(lots));
    }

    private void add(Set<Lack> lacks, RecordedUse use, Happening where) {
        Long item = use.item();
        if (item != null && !material.isCovered(use)) {
            lacks.add(Lack.ofMaterial(Set.of(item), where));
        }
        TraceRef made = use.into() == null ? null : where.node();
        untold(use).forEach(load -> lacks.add(Lack.ofLoad(load, where, made)));
    }

    private Stream<Untold> untold(RecordedUse use) {
        return material.positions(use).flatMap(position -> records.timeline(position).untold(use.use()).stream());
    }

    private static Optional<Happening> where(RecordedUse use, Map<TraceRef, Happening> steps) {
        return use.into() == null
                ? Optional.ofNullable(steps.get(use.step()))
                : Optional.of(Lacks.making(TraceRef.lot(use.into()), use.entry(), use.at()));
    }
}
