package dev.sunthread.simulator;

import dev.sunthread.simulator.world.Assembly;
import dev.sunthread.simulator.world.Assembly.Child;
import dev.sunthread.simulator.world.Layout;
import dev.sunthread.simulator.world.Layout.Operation;
import dev.sunthread.simulator.world.Supply;
import dev.sunthread.simulator.world.Work;
import dev.sunthread.simulator.world.Work.Use;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** People who build, test, repair and ship units. */
final class Builders {

    private final Floor floor;
    private final Chance chance;
    private final Units units;
    private final Valves valves;

    Builders(Floor floor, Units units, Valves valves) {
        this.floor = floor;
        this.chance = floor.chance;
        this.units = units;
        this.valves = valves;
    }

    /** The next operation of a unit, sometimes on others with it. */
    void work(Unit unit) {
        Operation operation = Objects.requireNonNull(unit.next());
        List<Unit> together = new ArrayList<>(List.of(unit));
        if (chance.of(0.4) && operation.test() == null) {
            together.addAll(chance.some(
                    units.loose()
                            .filter(other -> other != unit && operation.equals(other.next()))
                            .toList(),
                    2));
        }
        step(operation, together);
        if (operation.test() != null) {
            test(unit, operation.test());
        }
        together.forEach(one -> one.done.add(operation.code()));
    }

    /** An operation done once more, wherever the unit is. */
    void rework(Unit unit) {
        if (!unit.done.isEmpty()) {
            String again = chance.any(unit.done);
            step(Layout.route(unit.item).get(Layout.rank(unit.item, again)), List.of(unit));
        }
    }

    private void step(Operation operation, List<Unit> on) {
        on.forEach(unit -> units.ovens().free(unit.name));
        if (operation.takesMaterial() && on.size() > 1 && valves.changeInARow()) {
            row(operation, on.stream().map(unit -> unit.name).toList());
            return;
        }
        List<Use> uses = operation.takesMaterial()
                ? List.of(valves.draw(operation.station(), Objects.requireNonNull(operation.consumes())))
                : List.of();
        long at = floor.next();
        List<String> names = on.stream().map(unit -> unit.name).toList();
        String id = floor.named("step");
        floor.happens(new Work.Step(
                at, floor.start(), id, operation.code(), operation.station(), names, operation.alone(), uses));
    }

    // one step for all, which scans what was loaded at its start or at its end
    private void row(Operation operation, List<String> names) {
        Use first = valves.draw(operation.station(), Objects.requireNonNull(operation.consumes()));
        String id = floor.named("step");
        long at = floor.next();
        long start = floor.start();
        if (first.place() == null) {
            floor.happens(new Work.Step(
                    at, start, id, operation.code(), operation.station(), names, operation.alone(), List.of(first)));
            return;
        }
        int done = chance.between(1, names.size() - 1);
        List<String> begun = names.subList(0, done);
        floor.happens(new Work.Begun(
                at, start, id, operation.code(), operation.station(), begun, operation.alone(), List.of(first)));
        Use last = valves.drawAfterAChange(first);
        floor.happens(new Work.Step(
                floor.nextLater(),
                start,
                id,
                operation.code(),
                operation.station(),
                names,
                operation.alone(),
                List.of(chance.of(0.7) ? first : last),
                new Work.Rest(names.subList(done, names.size()), List.of(last))));
    }

    /** Tests a unit on the rig, wherever it is built in. */
    void test(Unit unit, String specification) {
        units.ovens().free(unit.name);
        long at = floor.next();
        floor.happens(new Work.Test(at, floor.start(), floor.named("test"), unit.name, specification, "RIG-1"));
    }

    /** Puts something that is ready into an empty position of a unit. */
    void fill(Unit parent) {
        Map<String, String> empty = units.empty(parent);
        if (empty.isEmpty()) {
            return;
        }
        String position = chance.any(empty.keySet());
        String item = Objects.requireNonNull(empty.get(position));
        if (item.equals("LENS")) {
            put(new Child(null, valves.stock().take(item).lot()), parent, position);
            return;
        }
        List<Unit> ready = units.loose()
                .filter(unit -> unit.item.equals(item) && unit.isReady())
                .filter(unit -> units.empty(unit).isEmpty() || chance.of(0.05))
                .toList();
        if (!ready.isEmpty()) {
            Unit child = chance.any(ready);
            units.ovens().free(child.name);
            put(new Child(child.name, null), parent, position);
        }
    }

    private void put(Child child, Unit parent, String position) {
        floor.happens(new Assembly.Installation(floor.next(), child, parent.name, position, station()));
    }

    /** Takes out a child, or recovers a part into stock. */
    void takeOut(Unit parent) {
        Map<String, String> children = floor.world.childrenOf(parent.name);
        Map<String, String> parts = floor.world.partsOf(parent.name);
        if (!children.isEmpty() && (parts.isEmpty() || chance.of(0.5))) {
            String position = chance.any(children.keySet());
            remove(new Child(children.get(position), null), parent, position);
        } else if (!parts.isEmpty()) {
            String position = chance.any(parts.keySet());
            if (chance.of(0.6)) {
                recover(parent, "LENS");
            }
            remove(new Child(null, parts.get(position)), parent, position);
        }
    }

    private void remove(Child child, Unit parent, String position) {
        floor.happens(new Assembly.Removal(floor.nextLater(), child, parent.name, position, station()));
    }

    /** Recovers matter of a unit into a lot. */
    void recover(Unit unit, String item) {
        String known = chance.of(0.7) ? item : null;
        floor.happens(
                new Supply.Recovery(floor.next(), unit.name, valves.stock().add(item), known));
    }

    void scrap(Unit unit) {
        floor.happens(new Assembly.Scrap(floor.next(), unit.name));
        unit.scrapped = true;
    }

    void ship(Unit unit) {
        units.ovens().free(unit.name);
        floor.happens(new Assembly.Shipment(floor.next(), floor.named("ship"), unit.name));
        unit.outOfPlant = true;
    }

    void comeBack(Unit unit) {
        floor.happens(new Assembly.Return(floor.next(), unit.name));
        unit.outOfPlant = false;
    }

    private @Nullable String station() {
        return chance.of(0.6) ? "LINE" : null;
    }
}
