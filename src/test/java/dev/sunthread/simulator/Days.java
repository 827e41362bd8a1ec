package dev.sunthread.simulator;

import dev.sunthread.simulator.world.Happening;
import dev.sunthread.simulator.world.Layout.Operation;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** Some days of a small plant: units are built in the order of their routes while other things happen in between. */
final class Days {

    private static final int MOST = 110;

    private record Job(double weight, Runnable work) {}

    private final Floor floor;
    private final Units units;
    private final Valves valves;
    private final Builders builders;
    private final List<Job> jobs = new ArrayList<>();

    private Days(Floor floor, Habits habits) {
        this.floor = floor;
        this.units = new Units(floor);
        this.valves = new Valves(floor, habits);
        this.builders = new Builders(floor, units, valves);
    }

    static List<Happening> of(Chance chance, Habits habits, double doubledSerials) {
        Days days = new Days(new Floor(chance), habits);
        days.beginWith(doubledSerials);
        while (days.floor.happened.size() < MOST) {
            days.doSomething();
        }
        days.units.ovens().end();
        return days.floor.happened;
    }

    private void beginWith(double doubled) {
        units.bear("RCV", floor.chance.between(4, 6), doubled);
        units.bear("WALL", floor.chance.between(2, 3), doubled);
        units.bear("MOD", floor.chance.between(1, 2), doubled);
        units.bear("PANEL", 1, doubled);
    }

    private void doSomething() {
        jobs.clear();
        build();
        cure();
        disturb();
        double drawn = floor.chance.between(0, 1_000_000)
                / 1e6
                * jobs.stream().mapToDouble(Job::weight).sum();
        for (Job job : jobs) {
            drawn -= job.weight();
            if (drawn <= 0) {
                job.work().run();
                return;
            }
        }
    }

    private void build() {
        onOne(units.free().filter(this::isDue), 12, builders::work);
        onOne(units.free().filter(unit -> !units.empty(unit).isEmpty() && mayBeFilled(unit)), 8, builders::fill);
        onOne(units.loose().filter(unit -> unit.item.equals("PANEL") && unit.isMarked()), 4, builders::ship);
        onOne(units.all().stream().filter(unit -> unit.outOfPlant), 0.7, builders::comeBack);
    }

    // the first operation of what is built of others waits until it is full, most times
    private boolean isDue(Unit unit) {
        Operation next = unit.next();
        boolean loose = floor.world.parentOf(unit.name) == null;
        boolean full = units.empty(unit).isEmpty() || floor.chance.of(0.004);
        return next != null && (loose || next.alone()) && full;
    }

    private boolean mayBeFilled(Unit unit) {
        return unit.done.isEmpty() || floor.chance.of(0.3);
    }

    private void cure() {
        onOne(units.loose().filter(unit -> unit.dueCure() != null), 8, this::bringToCure);
        jobs.add(new Job(units.ovens().runs() ? 5 : 0, units.ovens()::end));
        jobs.add(new Job(units.ovens().loaded().isEmpty() ? 0 : 2, units.ovens()::unload));
        jobs.add(new Job(0.4, units.ovens()::stack));
        onOne(units.loose(), 0.3, units.ovens()::load);
    }

    private void bringToCure(Unit unit) {
        boolean onTray = floor.world.carrierOf(unit.name) != null;
        String recipe = unit.dueCure();
        if (recipe != null && (onTray ? floor.chance.of(0.6) : floor.chance.of(0.15))) {
            units.ovens().start(unit, recipe);
        } else if (!onTray) {
            units.ovens().load(unit);
        }
    }

    private void disturb() {
        jobs.add(new Job(2, valves.stock()::workInStore));
        jobs.add(new Job(1, valves::tidy));
        onOne(units.free(), 0.5, builders::rework);
        onOne(units.free(), 0.5, unit -> builders.test(unit, "IV"));
        onOne(units.free().filter(this::isBuilt), 1, builders::takeOut);
        onOne(units.free(), 0.4, unit -> builders.recover(unit, floor.chance.of(0.5) ? "ADH" : "LENS"));
        onOne(units.loose(), 0.1, builders::scrap);
        onOne(units.loose(), 0.1, builders::ship);
    }

    private boolean isBuilt(Unit unit) {
        return !floor.world.childrenOf(unit.name).isEmpty()
                || !floor.world.partsOf(unit.name).isEmpty();
    }

    private void onOne(Stream<Unit> candidates, double weight, Consumer<Unit> work) {
        List<Unit> some = candidates.toList();
        if (!some.isEmpty()) {
            jobs.add(new Job(weight, () -> work.accept(floor.chance.any(some))));
        }
    }
}
