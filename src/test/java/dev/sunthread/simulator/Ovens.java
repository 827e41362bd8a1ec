package dev.sunthread.simulator;

import dev.sunthread.simulator.world.Heat;
import dev.sunthread.simulator.world.World;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** One oven with its trays and a rack. */
final class Ovens {

    private static final List<String> TRAYS = List.of("T1", "T2");
    private static final String RACK = "K1";

    private final Floor floor;
    private final Chance chance;
    private final World world;
    private final Units units;

    private Heat.@Nullable Begin running;

    private String recipe = "";

    Ovens(Floor floor, Units units) {
        this.floor = floor;
        this.chance = floor.chance;
        this.world = floor.world;
        this.units = units;
    }

    /** Whether a unit is in the oven while it runs. */
    boolean hold(String unit) {
        return running != null
                && (running.units().contains(unit) || running.carriers().contains(bottom(unit)));
    }

    private String bottom(String carried) {
        String carrier = world.carrierOf(carried);
        return carrier == null ? carried : bottom(carrier);
    }

    /** Puts a unit on a tray that isn't in the oven, or a tray on the rack. */
    void load(Unit unit) {
        List<String> trays =
                TRAYS.stream().filter(tray -> !inOven(tray) || chance.of(0.1)).toList();
        if (world.carrierOf(unit.name) == null && !trays.isEmpty()) {
            String tray = chance.any(trays);
            floor.happens(new Heat.Load(floor.next(), tray, unit.name, true, station()));
            if (inOven(tray)) {
                cured(unit.name, recipe);
            }
        }
    }

    void stack() {
        String tray = chance.any(TRAYS);
        if (running == null && world.carrierOf(tray) == null) {
            floor.happens(new Heat.Load(floor.next(), RACK, tray, false, station()));
        } else if (world.carrierOf(tray) != null && !inOven(tray)) {
            floor.happens(new Heat.Unload(floor.nextLater(), RACK, tray, false, station()));
        }
    }

    /** Starts a run under the recipe on the unit's carrier, perhaps with others, or on the unit by itself. */
    void start(Unit unit, String demanded) {
        if (running != null) {
            return;
        }
        boolean alone = world.carrierOf(unit.name) == null;
        Set<String> carriers = new TreeSet<>(alone ? List.of() : List.of(bottom(unit.name)));
        chance.each(TRAYS, 0.3).stream().map(this::bottom).forEach(carriers::add);
        recipe = demanded;
        running = new Heat.Begin(floor.next(), floor.named("cure"), alone ? Set.of(unit.name) : Set.of(), carriers);
        floor.happens(running);
        units.all().stream().filter(one -> hold(one.name)).forEach(one -> cured(one.name, recipe));
    }

    private void cured(String unit, String by) {
        world.wholeOf(world.outermostOf(unit))
                .forEach(name -> units.named(name).cures.add(by));
    }

    void end() {
        if (running != null) {
            floor.happens(new Heat.End(floor.next(), running, recipe, "OVEN-1"));
            running = null;
        }
    }

    /** Takes one unit off its tray, or everything. */
    void unload() {
        List<String> trays = TRAYS.stream()
                .filter(tray -> !world.carriedBy(tray).isEmpty() && (!inOven(tray) || chance.of(0.1)))
                .toList();
        if (trays.isEmpty()) {
            return;
        }
        String tray = chance.any(trays);
        if (chance.of(0.4)) {
            floor.happens(new Heat.Emptying(floor.nextLater(), tray, station()));
        } else {
            String unit = chance.any(new ArrayList<>(world.carriedBy(tray)));
            floor.happens(new Heat.Unload(floor.nextLater(), tray, unit, true, station()));
        }
    }

    /** Takes a unit off the tray it is on, so that it can be worked on. */
    void free(String unit) {
        String tray = world.carrierOf(unit);
        if (tray != null) {
            floor.happens(new Heat.Unload(floor.nextLater(), tray, unit, true, station()));
        }
    }

    private boolean inOven(String tray) {
        return running != null && running.carriers().contains(bottom(tray));
    }

    private @Nullable String station() {
        return chance.of(0.5) ? "OVEN" : null;
    }

    Set<String> loaded() {
        return units.all().stream()
                .map(unit -> unit.name)
                .filter(name -> world.carrierOf(name) != null)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    boolean runs() {
        return running != null;
    }

    String runningRecipe() {
        return Objects.requireNonNull(recipe);
    }
}
