package dev.sunthread.genealogy;

import dev.sunthread.genealogy.walk.Arrival;
import dev.sunthread.simulator.Chance;
import dev.sunthread.simulator.SimulatedPlant;
import dev.sunthread.simulator.told.Rates;
import dev.sunthread.simulator.world.Thing;
import dev.sunthread.simulator.world.World;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Compares what the trace says of simulated plants with what truly is in what: ever, now, and at a random time. */
final class SimulationCheck {

    /** What holds matter, so that something can be in it. */
    private static final Set<Thing.Kind> HOLDERS = EnumSet.of(Thing.Kind.LOT, Thing.Kind.CONTAINER, Thing.Kind.UNIT);

    private final Consumer<Arrival> toldTooMuch;
    private final Tally tally;

    SimulationCheck(Tally tally, Consumer<Arrival> toldTooMuch) {
        this.tally = tally;
        this.toldTooMuch = toldTooMuch;
    }

    /** The result for so many plants from a seed on. */
    static Tally of(Rates rates, long seed, int plants) {
        return of(rates, seed, plants, any -> {});
    }

    /** The same; what is told and not true is given away with how it was found. */
    static Tally of(Rates rates, long seed, int plants, Consumer<Arrival> toldTooMuch) {
        SimulationCheck check = new SimulationCheck(new Tally(), toldTooMuch);
        for (int i = 0; i < plants; i++) {
            SimulatedPlant plant = SimulatedPlant.of(seed + i, "p", rates);
            check.compare(seed + i, plant, SimulatedTrace.of(plant));
        }
        return check.tally;
    }

    /** Compares what a trace says with what was so in the plant that it is of. */
    void compare(long seed, SimulatedPlant plant, SimulatedTrace trace) {
        World end = plant.end();
        long instant = new Chance(seed).any(plant.moments());
        World then = plant.at(instant);
        Map<Question, Function<Thing, Set<Thing>>> truths = new LinkedHashMap<>();
        truths.put(Question.EVER, end::touched);
        truths.put(Question.NOW, end::present);
        truths.put(Question.at(instant), then::present);
        truths.forEach((question, truth) -> compare(seed, trace, question, truth));
        tally.plants++;
    }

    private void compare(long seed, SimulatedTrace trace, Question question, Function<Thing, Set<Thing>> truth) {
        Map<Thing, Set<Thing>> contents = new LinkedHashMap<>();
        trace.nodes().keySet().stream()
                .filter(thing -> HOLDERS.contains(thing.kind()))
                .forEach(holder -> contents.put(holder, truth.apply(holder)));
        for (Thing suspect : trace.nodes().keySet()) {
            if (suspect.name().endsWith("-again")) {
                continue;
            }
            Map<Thing, Arrival> answer = trace.arrivals(suspect, question);
            contents.forEach((holder, content) -> {
                if (!holder.equals(suspect)) {
                    Arrival arrival = answer.get(holder);
                    Certainty answered = arrival == null ? null : arrival.certainty();
                    compare(
                            new Tally.Odd(
                                    seed, said(question), suspect.name(), holder.name(), String.valueOf(answered)),
                            content.contains(suspect),
                            arrival);
                }
            });
        }
    }

    private void compare(Tally.Odd pair, boolean isTrue, @Nullable Arrival answered) {
        if (isTrue) {
            tally.truePairs++;
        }
        if (isTrue && answered == null) {
            tally.miss(pair);
        } else if (!isTrue && answered != null) {
            tally.excess(answered.certainty(), pair);
            toldTooMuch.accept(answered);
        }
    }

    private static String said(Question question) {
        return question.isEver() ? "ever" : question.equals(Question.NOW) ? "now" : "at " + question.instant();
    }
}
