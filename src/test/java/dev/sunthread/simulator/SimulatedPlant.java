package dev.sunthread.simulator;

import dev.sunthread.simulator.told.Fault;
import dev.sunthread.simulator.told.Rates;
import dev.sunthread.simulator.told.Telling;
import dev.sunthread.simulator.told.Told;
import dev.sunthread.simulator.world.Happening;
import dev.sunthread.simulator.world.Heat;
import dev.sunthread.simulator.world.Work;
import dev.sunthread.simulator.world.World;
import java.util.List;

/**
 * A small random plant: what truly happened in it, in its order, and what it recorded of that. The same seed gives the
 * same plant, with whatever name its records carry.
 */
public record SimulatedPlant(String name, List<Happening> happenings, List<Told> told) {

    public static SimulatedPlant of(long seed, String name, Rates rates) {
        Chance chance = new Chance(seed);
        Habits habits = Habits.drawn(chance, rates, new Chance(seed * 0x9E3779B97F4A7C15L));
        List<Happening> happenings = Days.of(chance, habits, rates.of(Fault.DOUBLED_SERIAL));
        return new SimulatedPlant(name, happenings, Telling.of(name, happenings, habits, rates, new Chance(~seed)));
    }

    /** The plant as it truly is at its end. */
    public World end() {
        return World.after(happenings);
    }

    /** The plant as it truly was after all that happened by an instant, in microseconds. */
    public World at(long instant) {
        return World.after(happenings.stream()
                .filter(happening -> happening.at() <= instant)
                .toList());
    }

    /** The instants of happenings at which no work or run is going on that ends later. */
    public List<Long> moments() {
        return happenings.stream()
                .map(Happening::at)
                .filter(instant -> happenings.stream().noneMatch(happening -> goesOnAt(happening, instant)))
                .toList();
    }

    private static boolean goesOnAt(Happening happening, long instant) {
        return happening instanceof Work work && work.start() <= instant && instant < work.at()
                || happening instanceof Heat.End end && end.begin().at() <= instant && instant < end.at();
    }
}
