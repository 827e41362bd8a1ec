package dev.sunthread.genealogy;

import dev.sunthread.genealogy.position.Changes;
import dev.sunthread.genealogy.position.PositionTimeline;
import dev.sunthread.genealogy.records.RecordedUse;
import dev.sunthread.genealogy.records.StationPosition;
import dev.sunthread.genealogy.records.UseRecords;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What steps and unloadings were said to have taken in. */
final class MemoryUses implements UseRecords {

    private final Remembered remembered;
    private final MemoryPositions positions;
    private final List<RecordedUse> ofSteps;
    private final List<RecordedUse> unloadings;

    MemoryUses(Remembered remembered, MemoryPositions positions) {
        this.remembered = remembered;
        this.positions = positions;
        this.ofSteps = remembered
                .of("step")
                .flatMap(step -> Remembered.list(step, "uses").stream().map(use -> use(step, use)))
                .toList();
        this.unloadings = remembered
                .of("discharge")
                .filter(one -> one.textOrNull("into") != null)
                .map(this::unloading)
                .toList();
    }

    private RecordedUse use(Said step, Map<String, Object> use) {
        String station = step.text("station");
        Moment start = remembered.started(step, station);
        Moment end = remembered.told(step);
        return new RecordedUse(
                remembered.entry(step),
                remembered.numbers().item((String) Objects.requireNonNull(use.get("item"))),
                use.get("lot") == null
                        ? null
                        : remembered.lot(Objects.requireNonNull(use.get("lot"))).id(),
                use.get("container") == null ? null : remembered.vessel(use).id(),
                position(station, (String) use.get("position")),
                remembered.numbers().station(station),
                station,
                step.text("operation"),
                new Moment(start.early(), end.late()),
                step.instant(),
                null);
    }

    private RecordedUse unloading(Said off) {
        String station = off.text("station");
        String lot = off.textOrNull("lot");
        return new RecordedUse(
                remembered.entry(off),
                null,
                lot == null ? null : remembered.lot(lot).id(),
                null,
                position(station, off.text("position")),
                remembered.numbers().station(station),
                station,
                "unloading",
                remembered.told(off),
                off.instant(),
                remembered.lot(off.text("into")).id());
    }

    private @Nullable Long position(String station, @Nullable String code) {
        return code == null ? null : remembered.numbers().position(station, code);
    }

    @Override
    public List<RecordedUse> in(Collection<TraceRef> steps) {
        return ofSteps;
    }

    @Override
    public List<RecordedUse> thatMayHaveTaken(
            Collection<TraceRef> material, Collection<StationPosition> held, Optional<Set<Long>> items) {
        return Stream.concat(ofSteps.stream(), unloadings.stream()).toList();
    }

    @Override
    public List<RecordedUse> unloadedInto(Collection<Long> lots) {
        return unloadings;
    }

    @Override
    public List<RecordedUse> unscanned(Collection<Long> items) {
        return ofSteps.stream()
                .filter(use -> use.lot() == null
                        || positionsOf(use.station()).stream()
                                .anyMatch(position -> timeline(position).ranOutDuring(use.at())))
                .toList();
    }

    @Override
    public Set<Long> itemsUnscanned() {
        return unscanned(List.of()).stream()
                .map(RecordedUse::item)
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
    }

    @Override
    public List<RecordedUse> at(Collection<Long> numbers) {
        return ofSteps.stream()
                .filter(use -> use.position() != null && numbers.contains(use.position()))
                .toList();
    }

    @Override
    public List<StationPosition> positionsOf(long station) {
        return positions.all().filter(position -> position.station() == station).toList();
    }

    @Override
    public List<StationPosition> positions(Collection<Long> numbers) {
        return positions
                .all()
                .filter(position -> numbers.contains(position.id()))
                .toList();
    }

    @Override
    public List<StationPosition> positionsThatHeld(Collection<Long> lots) {
        return positions.all().toList();
    }

    @Override
    public List<StationPosition> unloadedOfNoRecord(Collection<Long> items) {
        return positions.all().toList();
    }

    @Override
    public Changes changes(StationPosition position) {
        return positions.changes(position);
    }

    @Override
    public PositionTimeline timeline(StationPosition position) {
        return positions.timeline(position);
    }
}
