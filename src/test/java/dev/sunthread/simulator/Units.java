package dev.sunthread.simulator;

import dev.sunthread.simulator.world.Assembly;
import dev.sunthread.simulator.world.Layout;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;

/** All units of the plant, and which of them can be worked on. */
final class Units {

    private final Floor floor;
    private final Ovens ovens;
    private final Map<String, Unit> units = new LinkedHashMap<>();

    Units(Floor floor) {
        this.floor = floor;
        this.ovens = new Ovens(floor, this);
    }

    Ovens ovens() {
        return ovens;
    }

    /** New units; two of them may get the same serial, though not within moments. */
    void bear(String item, int count, double doubled) {
        String serial = "";
        for (int i = 0; i < count; i++) {
            String name = floor.named(item.substring(0, 1).toLowerCase(java.util.Locale.ROOT));
            boolean again = i > 0 && floor.chance.of(doubled);
            serial = again ? serial : name;
            units.put(name, new Unit(name, item));
            long at = again ? floor.nextApart() : floor.next();
            floor.happens(new Assembly.Birth(at, name, serial, floor.chance.of(0.5) ? "LINE" : null));
        }
    }

    Unit named(String name) {
        return Objects.requireNonNull(units.get(name), name);
    }

    /** Every unit in the plant that is neither scrapped nor busy in an oven. */
    Stream<Unit> free() {
        return units.values().stream().filter(this::isFree);
    }

    Stream<Unit> loose() {
        return free().filter(unit -> floor.world.parentOf(unit.name) == null);
    }

    private boolean isFree(Unit unit) {
        Unit outermost = named(floor.world.outermostOf(unit.name));
        return !outermost.outOfPlant && !outermost.scrapped && !unit.scrapped && !ovens.hold(outermost.name);
    }

    /** Positions of a unit that nothing is in, with the item that goes there. */
    Map<String, String> empty(Unit unit) {
        Map<String, String> empty = new TreeMap<>(Layout.structure(unit.item));
        empty.keySet().removeAll(floor.world.childrenOf(unit.name).keySet());
        empty.keySet().removeAll(floor.world.partsOf(unit.name).keySet());
        return empty;
    }

    /** Every unit that was ever inside the plant, in the order of their births. */
    List<Unit> all() {
        return List.copyOf(units.values());
    }
}
