package dev.sunthread.simulator;

import dev.sunthread.simulator.world.Layout;
import dev.sunthread.simulator.world.Loading;
import dev.sunthread.simulator.world.Place;
import dev.sunthread.simulator.world.Source;
import dev.sunthread.simulator.world.Work.Use;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Positions of stations: what is loaded, drawn and left behind there. */
final class Valves {

    private final Floor floor;
    private final Chance chance;
    private final Stock stock;
    private final Habits habits;
    private final Map<Place, Source> loaded = new LinkedHashMap<>();

    Valves(Floor floor, Habits habits) {
        this.floor = floor;
        this.chance = floor.chance;
        this.habits = habits;
        this.stock = new Stock(floor, this);
    }

    Stock stock() {
        return stock;
    }

    boolean regrades() {
        return habits.regrades();
    }

    boolean hold(Source source) {
        return loaded.containsValue(source);
    }

    boolean hold(String lot) {
        return loaded.values().stream().anyMatch(source -> source.lot().equals(lot));
    }

    /** Draws material for a step, loading or changing it first where that is due. */
    Use draw(String station, String item) {
        if (item.equals("MIX") && habits.mixByHand()) {
            return new Use("MIX", stock.take("MIX"), null, Set.of());
        }
        if (habits.byHand() && chance.of(0.3)) {
            Source taken = stock.take(item);
            return new Use(stock.itemOf(taken.lot()), taken, null, Set.of());
        }
        Place place = placeFor(station);
        if (!serves(place, item) || chance.of(habits.changes())) {
            change(place, item);
        }
        Source source = Objects.requireNonNull(loaded.get(place));
        return new Use(stock.itemOf(source.lot()), source, place, carried(place));
    }

    /** Whether material is to be changed in the middle of a row of units. */
    boolean changeInARow() {
        return habits.rows() && chance.of(0.6);
    }

    /** Changes what a draw before came from for more of the item, and draws of that. */
    Use drawAfterAChange(Use before) {
        Place place = Objects.requireNonNull(before.place());
        if (chance.of(0.9)) {
            discharge(place);
        }
        if (chance.of(0.2)) {
            floor.happens(new Loading.Purge(floor.next(), place));
        }
        charge(place, stock.takeOnly(before.item()));
        return new Use(before.item(), Objects.requireNonNull(loaded.get(place)), place, carried(place));
    }

    private boolean serves(Place place, String item) {
        Source there = loaded.get(place);
        String of = there == null ? "" : stock.itemOf(there.lot());
        return of.equals(item) || of.equals(Layout.ALTERNATES.get(item));
    }

    private Place placeFor(String station) {
        return new Place(station, chance.any(Objects.requireNonNull(Layout.POSITIONS.get(station))));
    }

    private void change(Place place, String item) {
        if (loaded.containsKey(place)) {
            discharge(place);
        }
        if (chance.of(0.3)) {
            floor.happens(new Loading.Purge(floor.next(), place));
        }
        Source source = stock.take(foreign(place) ? "PRI" : item);
        charge(place, source);
        if (!serves(place, item)) {
            discharge(place);
            charge(place, stock.take(item));
        }
    }

    // now and then another material is loaded by mistake, and taken off unused
    private boolean foreign(Place place) {
        return habits.foreign() && place.station().equals("BOND") && chance.of(0.5);
    }

    private void charge(Place place, Source source) {
        floor.happens(new Loading.Charge(floor.next(), place, source));
        loaded.put(place, source);
    }

    private void discharge(Place place) {
        Source source = Objects.requireNonNull(loaded.remove(place));
        boolean mixes = place.equals(Layout.TANK) && chance.of(0.5);
        Set<Source> carried = mixes ? carried(place) : Set.of();
        String into = mixes ? stock.add(stock.itemOf(source.lot())) : null;
        floor.happens(new Loading.Discharge(floor.next(), place, source, into, carried));
    }

    /** Takes off what is loaded somewhere, or purges what is empty. */
    void tidy() {
        Place place = placeFor(chance.any(List.of("BOND", "PRIME", "COATER", "GLUE", "SEAL")));
        if (loaded.containsKey(place)) {
            discharge(place);
        } else if (chance.of(0.5)) {
            floor.happens(new Loading.Purge(floor.next(), place));
        }
    }

    /** Which of the earlier loads go along with a draw now; of one that the limit has flushed out nothing is left. */
    private Set<Source> carried(Place place) {
        Integer limit = habits.carryOver().get(place);
        boolean clean = limit != null && floor.world.usesSinceChange(place) >= limit;
        Map<String, Source> left = new TreeMap<>();
        floor.world.leftAt(place).forEach(source -> left.put(source.toString(), source));
        List<Source> drawn = clean ? List.of() : chance.each(left.values(), 0.5);
        return drawn.stream()
                .filter(source -> limit == null || floor.world.usesSinceLeft(place, source) < limit)
                .collect(Collectors.toSet());
    }
}
