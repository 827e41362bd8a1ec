package dev.sunthread.simulator;

import dev.sunthread.simulator.world.Layout;
import dev.sunthread.simulator.world.Source;
import dev.sunthread.simulator.world.Supply;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/** Lots and containers, and all that is done to them in the store. */
final class Stock {

    /** A lot in the store; one with containers is taken by container only. */
    private static final class Lot {
        final String name;
        final String item;
        final List<String> containers = new ArrayList<>();
        boolean gone;

        Lot(String name, String item) {
            this.name = name;
            this.item = item;
        }
    }

    private final Floor floor;
    private final Chance chance;
    private final Valves valves;
    private final Map<String, Lot> lots = new LinkedHashMap<>();

    Stock(Floor floor, Valves valves) {
        this.floor = floor;
        this.chance = floor.chance;
        this.valves = valves;
    }

    /** Material of the item or its alternate that can be taken; received or mixed if there is none. */
    Source take(String item) {
        List<Source> there = sources(item);
        String alternate = Layout.ALTERNATES.get(item);
        if (alternate != null && chance.of(0.25)) {
            there = sources(alternate);
            item = alternate;
        }
        return any(item, there);
    }

    /** The same without an alternate. */
    Source takeOnly(String item) {
        return any(item, sources(item));
    }

    private Source any(String item, List<Source> there) {
        if (there.isEmpty() || chance.of(0.15) && count(item) < 4) {
            bring(item);
            return chance.any(sources(item));
        }
        return chance.any(there);
    }

    String itemOf(String lot) {
        return Objects.requireNonNull(lots.get(lot), lot).item;
    }

    /** A new lot that came about elsewhere, such as by unloading or recovery. */
    String add(String item) {
        Lot lot = new Lot(floor.named(item + "-"), item);
        lots.put(lot.name, lot);
        return lot.name;
    }

    private void bring(String item) {
        if (item.equals("MIX")) {
            mix();
            return;
        }
        long at = floor.next();
        List<String> supplierLots = chance.each(List.of("X", "Y"), 0.6);
        String lot = add(item);
        floor.happens(new Supply.Receipt(at, lot, item, supplierLots.isEmpty() ? List.of("Z") : supplierLots));
        if (item.startsWith("AD") && chance.of(0.4)) {
            fill(Objects.requireNonNull(lots.get(lot)));
        }
    }

    private void mix() {
        Source base = take("BASE");
        Source hard = take("HARD");
        floor.happens(new Supply.Blend(floor.next(), add("MIX"), "MIX", false, List.of(base, hard)));
    }

    /** One of the things that are done in a store. */
    void workInStore() {
        String item = chance.any(List.of("ADH", "ADH", "ADB", "PRI", "COAT", "LENS", "MIX"));
        List<Lot> idle = idle(item);
        if (idle.isEmpty()) {
            bring(item);
            return;
        }
        Lot lot = chance.any(idle);
        switch (chance.between(0, 6)) {
            case 0 -> fill(lot);
            case 1 -> split(lot);
            case 2 -> merge(lot, idle);
            case 3 -> topUp(lot, idle);
            case 4 -> topUpContainer(lot);
            case 5 -> relabel(lot);
            default -> end(lot);
        }
    }

    private void fill(Lot lot) {
        List<String> labels = Stream.generate(() -> floor.named(lot.name + "c"))
                .limit(chance.between(1, 2))
                .toList();
        lot.containers.addAll(labels);
        floor.happens(new Supply.Filling(floor.next(), lot.name, labels));
    }

    private void split(Lot lot) {
        Source from = new Source(lot.name, lot.containers.isEmpty() ? null : chance.any(lot.containers));
        List<String> into = Stream.generate(() -> add(lot.item)).limit(2).toList();
        floor.happens(new Supply.Split(floor.next(), from, into));
        lot.gone |= chance.of(0.5);
    }

    private void merge(Lot lot, List<Lot> idle) {
        List<Lot> whole = idle.stream()
                .filter(one -> one.containers.isEmpty() && one != lot)
                .limit(1)
                .toList();
        if (lot.containers.isEmpty() && !whole.isEmpty()) {
            lot.gone = true;
            whole.get(0).gone = true;
            List<String> names = List.of(lot.name, whole.get(0).name);
            floor.happens(new Supply.Merge(floor.next(), names, add(lot.item)));
        }
    }

    // a lot in containers isn't topped up as a whole; its containers are
    private void topUp(Lot lot, List<Lot> idle) {
        Lot other = chance.any(idle);
        if (lot.containers.isEmpty() && other != lot) {
            Source part = new Source(other.name, other.containers.isEmpty() ? null : chance.any(other.containers));
            floor.happens(new Supply.Blend(floor.next(), lot.name, lot.item, true, List.of(part)));
        }
    }

    private void topUpContainer(Lot lot) {
        List<String> labels = idle(lot.item).stream()
                .filter(one -> one != lot)
                .flatMap(one -> one.containers.stream())
                .toList();
        if (lot.containers.isEmpty() && !labels.isEmpty()) {
            floor.happens(new Supply.Filling(floor.next(), lot.name, List.of(chance.any(labels))));
        }
    }

    private void relabel(Lot lot) {
        if (lot.containers.isEmpty()) {
            String other = valves.regrades() ? Layout.otherGrade(lot.item) : null;
            String into = add(other == null ? lot.item : other);
            floor.happens(new Supply.Relabel(floor.next(), lot.name, into, other));
            lot.gone = true;
        }
    }

    private void end(Lot lot) {
        if (count(lot.item) > 1) {
            floor.happens(new Supply.Ending(floor.next(), lot.name));
            lot.gone = true;
        }
    }

    private List<Lot> idle(String item) {
        return lots.values().stream()
                .filter(lot -> !lot.gone && lot.item.equals(item) && !valves.hold(lot.name))
                .toList();
    }

    private List<Source> sources(String item) {
        return lots.values().stream()
                .filter(lot -> !lot.gone && lot.item.equals(item))
                .flatMap(Stock::sources)
                .filter(source -> !valves.hold(source))
                .toList();
    }

    private static Stream<Source> sources(Lot lot) {
        return lot.containers.isEmpty()
                ? Stream.of(new Source(lot.name, null))
                : lot.containers.stream().map(label -> new Source(lot.name, label));
    }

    private long count(String item) {
        return lots.values().stream()
                .filter(lot -> !lot.gone && lot.item.equals(item))
                .count();
    }
}
