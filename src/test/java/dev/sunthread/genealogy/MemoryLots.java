package dev.sunthread.genealogy;

import dev.sunthread.genealogy.records.Blending;
import dev.sunthread.genealogy.records.LotRecords;
import dev.sunthread.genealogy.records.LotSpan;
import dev.sunthread.genealogy.records.Making;
import dev.sunthread.genealogy.records.Unfilled;
import dev.sunthread.genealogy.records.Unmade;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** How lots and containers were said to have come about. */
final class MemoryLots implements LotRecords {

    private final Remembered remembered;
    private final MemoryLotSigns signs;
    private final List<Making> makings = new ArrayList<>();
    private final MemoryItems items;
    private final MemoryContainers containers;
    private final MemoryPlaces places;

    MemoryLots(Remembered remembered) {
        this.remembered = remembered;
        this.signs = new MemoryLotSigns(remembered);
        this.items = new MemoryItems(remembered);
        this.containers = new MemoryContainers(remembered, items);
        this.places = new MemoryPlaces(remembered, items);
        remembered
                .of("blend")
                .forEach(one -> Remembered.list(one, "components")
                        .forEach(part -> make(one, part, one.text("lot"), one.text("way"))));
        remembered
                .of("split")
                .forEach(one -> Remembered.list(one, "into")
                        .forEach(share -> make(one, one.body(), text(share, "lot"), "split")));
        remembered
                .of("merge")
                .forEach(one -> Remembered.texts(one.body(), "lots")
                        .forEach(lot -> make(one, Map.of("lot", lot), one.text("into"), "merge")));
        Stream.of("relabel", "regrade")
                .forEach(way -> remembered.of(way).forEach(one -> make(one, one.body(), one.text("into"), way)));
        remembered
                .of("container")
                .forEach(one ->
                        Remembered.list(one, "containers").forEach(filling -> fill(one, text(filling, "label"))));
        remembered.of("recovery").forEach(this::recover);
    }

    /** The item of a lot if its records agree. */
    @Nullable
    Long itemOf(TraceRef lot) {
        Set<Long> recorded = items.of(lot);
        return recorded.size() == 1 ? recorded.iterator().next() : null;
    }

    private void make(Said one, Map<String, Object> part, String into, String way) {
        TraceRef lot = remembered.lot(text(part, "lot"));
        makings.add(new Making(
                remembered.entry(one),
                remembered.vessel(part),
                lot.id(),
                remembered.lot(into),
                way,
                remembered.told(one)));
    }

    private void fill(Said one, String label) {
        TraceRef container = remembered.numbers().node(TraceKind.CONTAINER, label);
        TraceRef lot = remembered.lot(one.text("lot"));
        makings.add(new Making(remembered.entry(one), lot, lot.id(), container, "filled", remembered.told(one)));
    }

    private void recover(Said one) {
        makings.add(new Making(
                remembered.entry(one),
                remembered.unit(one.map("unit")),
                null,
                remembered.lot(one.text("lot")),
                "recovered",
                remembered.told(one)));
    }

    @Override
    public List<Making> from(Collection<TraceRef> sources) {
        return makings;
    }

    @Override
    public List<Making> into(Collection<TraceRef> targets) {
        return makings;
    }

    @Override
    public List<LotSpan> spansOfItems(Collection<Long> wanted) {
        return spans();
    }

    @Override
    public List<LotSpan> spansOf(Collection<Long> lots) {
        return spans();
    }

    private List<LotSpan> spans() {
        return signs.lots().stream()
                .flatMap(lot -> items.of(lot).isEmpty()
                        ? Stream.of(signs.span(lot, null))
                        : items.of(lot).stream().map(item -> signs.span(lot, item)))
                .toList();
    }

    @Override
    public List<Blending> blendsDemanding(Collection<Long> components) {
        return blends(List.of());
    }

    @Override
    public List<Blending> blends(Collection<Long> lots) {
        return remembered
                .of("blend")
                .filter(one -> !one.text("way").equals("top-up"))
                .map(one -> new Blending(
                        remembered.entry(one),
                        remembered.lot(one.text("lot")).id(),
                        remembered.numbers().item(one.text("item")),
                        remembered.told(one),
                        componentItems(one)))
                .toList();
    }

    @Override
    public List<Unmade> unmade() {
        return signs.lotsOrRemoved().stream()
                .filter(signs::isUnmade)
                .map(lot -> new Unmade(
                        lot.id(), itemsOf(lot).isEmpty() ? places.itemsOf(lot) : itemsOf(lot), signs.first(lot)))
                .toList();
    }

    @Override
    public List<Making> labelled() {
        return containers.labelled();
    }

    @Override
    public List<Unfilled> unfilled() {
        return containers.unfilled();
    }

    private Set<Long> itemsOf(TraceRef lot) {
        Set<Long> known = new HashSet<>(items.of(lot));
        remembered
                .of("step")
                .flatMap(one -> Remembered.list(one, "uses").stream())
                .filter(use -> use.get("lot") != null
                        && remembered
                                .lot(Objects.requireNonNull(use.get("lot")))
                                .equals(lot))
                .map(use -> remembered.numbers().item(text(use, "item")))
                .forEach(known::add);
        return known;
    }

    @Override
    public Map<Long, Set<Long>> madeOf() {
        Map<Long, Set<Long>> made = new HashMap<>();
        items.all().forEach(item -> made.put(item, new HashSet<>()));
        makings.stream()
                .filter(making -> making.lot() != null && making.to().kind() == TraceKind.LOT)
                .forEach(making -> items.of(making.to())
                        .forEach(item -> Objects.requireNonNull(made.get(item))
                                .addAll(items.of(TraceRef.lot(Objects.requireNonNull(making.lot()))))));
        return made;
    }

    @Override
    public Set<Long> itemsMixed() {
        return places.itemsMixed();
    }

    @Override
    public Set<Long> items() {
        return items.all();
    }

    @Override
    public Map<Long, String> unitsOfItems() {
        Map<Long, String> units = new HashMap<>();
        remembered
                .everSaid()
                .filter(one -> one.kind().equals("item"))
                .forEach(one ->
                        units.putIfAbsent(remembered.numbers().item(one.text("item")), one.text("unitOfMeasure")));
        return units;
    }

    private Set<Long> componentItems(Said blend) {
        return Remembered.list(blend, "components").stream()
                .flatMap(part -> items.of(remembered.lot(text(part, "lot"))).stream())
                .collect(Collectors.toSet());
    }

    private static String text(Map<String, Object> body, String field) {
        return (String) Objects.requireNonNull(body.get(field), field);
    }
}
