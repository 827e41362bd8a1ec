package dev.sunthread.genealogy;

import dev.sunthread.genealogy.demand.RunDemand;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.records.HappeningRecords;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Steps and runs that were said. */
final class MemoryHappenings implements HappeningRecords {

    private final Remembered remembered;
    private final List<Happening> all;

    MemoryHappenings(Remembered remembered) {
        this.remembered = remembered;
        this.all = Stream.of(
                        remembered.of("step").map(this::step),
                        remembered.of("cure-run").map(this::cure),
                        remembered.of("test-run").map(this::test))
                .flatMap(happenings -> happenings)
                .toList();
    }

    @Override
    public List<Happening> naming(Collection<TraceRef> unitsAndCarriers) {
        return all;
    }

    @Override
    public List<Happening> of(Collection<TraceRef> nodes) {
        return all;
    }

    @Override
    public List<Happening> under(Collection<RunDemand> demands) {
        return all.stream().filter(happening -> happening.under() != null).toList();
    }

    private Happening step(Said step) {
        return Happening.step(
                remembered.entry(step),
                remembered.started(step, step.text("station")),
                remembered.told(step),
                step.maps("units").stream().map(remembered::unit).collect(Collectors.toSet()),
                step.text("operation"),
                clock(step.text("station")));
    }

    private Happening cure(Said run) {
        Set<TraceRef> units =
                Remembered.list(run, "units").stream().map(remembered::unit).collect(Collectors.toSet());
        Set<TraceRef> carriers = Remembered.list(run, "carriers").stream()
                .map(load -> remembered.carrier(Objects.requireNonNull(load.get("carrier"))))
                .collect(Collectors.toSet());
        return run(TraceKind.CURE_RUN, run, run.text("recipe"), units, carriers);
    }

    private Happening test(Said run) {
        return run(
                TraceKind.TEST_RUN, run, run.text("specification"), Set.of(remembered.unit(run.map("unit"))), Set.of());
    }

    private Happening run(TraceKind kind, Said run, String under, Set<TraceRef> units, Set<TraceRef> carriers) {
        String station = stationOf(run.text("equipment"));
        return new Happening(
                remembered.numbers().node(kind, run.text("run")),
                remembered.entry(run),
                remembered.started(run, station),
                remembered.told(station, run.instant()),
                units,
                carriers,
                null,
                new RunDemand(kind, remembered.numbers().definition(kind, under)),
                station == null ? null : clock(station));
    }

    private static Long clock(String station) {
        return (long) station.hashCode();
    }

    private @Nullable String stationOf(String equipment) {
        return remembered
                .of("equipment")
                .filter(one -> one.text("equipment").equals(equipment))
                .max(Comparator.comparingLong(Said::instant))
                .map(one -> one.textOrNull("station"))
                .orElse(null);
    }
}
