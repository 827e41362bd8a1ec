package dev.sunthread.genealogy;

import dev.sunthread.genealogy.records.Elsewhere;
import dev.sunthread.genealogy.records.Installation;
import dev.sunthread.genealogy.records.PlacementFacts;
import dev.sunthread.genealogy.records.PlacementRecords;
import dev.sunthread.genealogy.records.Removal;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/** What was said to be put into what and onto which carrier. */
final class MemoryPlacements implements PlacementRecords {

    private final Remembered remembered;
    private final PlacementFacts inParents;
    private final PlacementFacts onCarriers;

    MemoryPlacements(Remembered remembered) {
        this.remembered = remembered;
        this.inParents = new PlacementFacts(
                remembered.of("installation").map(this::installation).toList(),
                remembered.of("removal").map(this::removal).toList());
        this.onCarriers = new PlacementFacts(
                remembered.of("carrier-load").flatMap(this::loads).toList(),
                remembered.of("carrier-unload").flatMap(this::unloads).toList());
    }

    @Override
    public PlacementFacts of(Collection<TraceRef> children) {
        return inParents;
    }

    @Override
    public PlacementFacts in(Collection<TraceRef> parents) {
        return inParents;
    }

    @Override
    public PlacementFacts carrying(Collection<TraceRef> carried) {
        return onCarriers;
    }

    @Override
    public PlacementFacts carriedBy(Collection<TraceRef> carriers) {
        return onCarriers;
    }

    @Override
    public List<Elsewhere> elsewhere(Collection<TraceRef> units) {
        Stream<Elsewhere> installed = remembered
                .of("installation")
                .filter(put -> !put.map("child").containsKey("lot"))
                .map(put -> new Elsewhere(child(put.map("child")), remembered.told(put)));
        Stream<Elsewhere> gone = Stream.of("shipment", "scrap")
                .flatMap(remembered::of)
                .flatMap(one -> Remembered.list(one, "units").stream()
                        .map(unit -> new Elsewhere(remembered.unit(unit), remembered.told(one))));
        return Stream.concat(installed, gone).toList();
    }

    private Installation installation(Said put) {
        return new Installation(
                remembered.entry(put),
                child(put.map("child")),
                remembered.unit(put.map("parent")),
                put.textOrNull("position"),
                remembered.told(put));
    }

    private Removal removal(Said taken) {
        return new Removal(
                remembered.entry(taken),
                child(taken.map("child")),
                remembered.unit(taken.map("parent")),
                taken.textOrNull("position"),
                remembered.told(taken));
    }

    private TraceRef child(Map<String, Object> child) {
        return child.containsKey("lot")
                ? remembered.lot(Objects.requireNonNull(child.get("lot")))
                : remembered.unit(Said.map(child, "unit"));
    }

    private Stream<Installation> loads(Said load) {
        return Remembered.list(load, "loads").stream()
                .map(one -> new Installation(
                        remembered.entry(load),
                        carried(one),
                        remembered.carrier(load.text("carrier")),
                        (String) one.get("position"),
                        remembered.told(load)));
    }

    private Stream<Removal> unloads(Said unload) {
        TraceRef carrier = remembered.carrier(unload.text("carrier"));
        List<TraceRef> taken =
                Remembered.list(unload, "unloads").stream().map(this::carried).toList();
        return (taken.isEmpty() ? List.of(carrier) : taken)
                .stream()
                        .map(one -> new Removal(remembered.entry(unload), one, carrier, null, remembered.told(unload)));
    }

    private TraceRef carried(Map<String, Object> one) {
        Object carrier = one.get("carrier");
        return carrier == null ? remembered.unit(Said.map(one, "unit")) : remembered.carrier(carrier);
    }
}
