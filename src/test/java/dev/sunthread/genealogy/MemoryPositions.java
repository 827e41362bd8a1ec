package dev.sunthread.genealogy;

import dev.sunthread.genealogy.line.LineDoubts;
import dev.sunthread.genealogy.position.CarryOverLimits;
import dev.sunthread.genealogy.position.CarryOverLimits.Limit;
import dev.sunthread.genealogy.position.Change.Charge;
import dev.sunthread.genealogy.position.Change.Discharge;
import dev.sunthread.genealogy.position.Changes;
import dev.sunthread.genealogy.position.PositionTimeline;
import dev.sunthread.genealogy.position.Use;
import dev.sunthread.genealogy.records.OpenLine;
import dev.sunthread.genealogy.records.StationPosition;
import dev.sunthread.genealogy.walk.Moment;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What was said of each position of each station. */
final class MemoryPositions {

    private final Remembered remembered;
    private final MemoryLots lots;
    private final List<OpenLine> lines;
    private final Map<Long, StationPosition> positions = new TreeMap<>();
    private final Map<Long, PositionTimeline> timelines = new HashMap<>();

    MemoryPositions(Remembered remembered, MemoryLots lots, List<OpenLine> lines) {
        this.lines = lines;
        this.remembered = remembered;
        this.lots = lots;
        remembered
                .of("station")
                .forEach(station -> Remembered.texts(station.body(), "positions")
                        .forEach(code -> learn(station.text("station"), code)));
    }

    private void learn(String station, String code) {
        long number = remembered.numbers().position(station, code);
        positions.put(number, new StationPosition(number, remembered.numbers().station(station), code, station));
    }

    Stream<StationPosition> all() {
        return positions.values().stream();
    }

    Changes changes(StationPosition position) {
        return Changes.of(
                at(position, "charge").map(this::charge).toList(),
                at(position, "discharge").map(this::discharge).toList(),
                LineDoubts.takingBack(lines),
                new LineDoubts(lines, lots::itemOf).at(position.id()));
    }

    private Charge charge(Said on) {
        var lot = remembered.lot(on.text("lot"));
        return new Charge(lot, lots.itemOf(lot), remembered.told(on), remembered.entry(on));
    }

    private Discharge discharge(Said off) {
        String lot = off.textOrNull("lot");
        return new Discharge(lot == null ? null : remembered.lot(lot), remembered.told(off), remembered.entry(off));
    }

    PositionTimeline timeline(StationPosition position) {
        return timelines.computeIfAbsent(position.id(), any -> read(position));
    }

    private PositionTimeline read(StationPosition position) {
        List<Limit> limits = limits(position);
        return PositionTimeline.of(
                position.named(),
                changes(position),
                at(position, "clean-point")
                        .filter(one -> !LineDoubts.takenBack(lines).contains(remembered.entry(one)))
                        .map(remembered::told)
                        .toList(),
                uses(position),
                limits.stream().allMatch(limit -> limit.uses() == null)
                        ? CarryOverLimits.NONE
                        : new CarryOverLimits(limits, cycles(position)));
    }

    private List<Limit> limits(StationPosition position) {
        return remembered
                .of("station")
                .filter(station -> station.text("station").equals(position.stationCode()))
                .sorted(Comparator.comparingLong(Said::instant).thenComparing(remembered::entry))
                .map(station -> new Limit(station.instant(), limit(station, position.code())))
                .toList();
    }

    private static @Nullable Integer limit(Said station, String code) {
        return Remembered.list(station, "carryOver").stream()
                .filter(limit -> code.equals(limit.get("position")))
                .map(limit -> (Integer) limit.get("uses"))
                .findFirst()
                .orElse(null);
    }

    // as the last of its records, for a use may be recorded twice
    private List<Moment> cycles(StationPosition position) {
        Map<String, Moment> last = new HashMap<>();
        steps(position)
                .filter(step -> usesAt(step, position).findAny().isPresent())
                .forEach(step ->
                        last.merge(new TreeSet<>(step.serials("units")).toString(), told(step), Moment::orLater));
        return last.values().stream()
                .map(ended -> remembered.told(position.stationCode(), ended.early(), ended.late()))
                .toList();
    }

    private static Moment told(Said step) {
        long ended = step.instant();
        var started = step.momentOrNull("startedAt");
        return new Moment(started == null ? ended : Said.micros(started), ended);
    }

    private Moment moment(Said step) {
        Moment told = told(step);
        return remembered.told(step.text("station"), told.early(), told.late());
    }

    private List<Use> uses(StationPosition position) {
        return steps(position)
                .flatMap(step -> usesAt(step, position).map(use -> {
                    Object lot = use.get("lot");
                    long item = remembered.numbers().item((String) Objects.requireNonNull(use.get("item")));
                    return new Use(moment(step), item, lot == null ? null : remembered.lot(lot));
                }))
                .toList();
    }

    private Stream<Said> steps(StationPosition position) {
        return remembered.of("step").filter(step -> step.text("station").equals(position.stationCode()));
    }

    private static Stream<Map<String, Object>> usesAt(Said step, StationPosition position) {
        return Remembered.list(step, "uses").stream()
                .filter(use -> Objects.equals(use.get("position"), position.code()));
    }

    private Stream<Said> at(StationPosition position, String kind) {
        return remembered
                .of(kind)
                .filter(one -> one.text("station").equals(position.stationCode())
                        && one.text("position").equals(position.code()));
    }
}
