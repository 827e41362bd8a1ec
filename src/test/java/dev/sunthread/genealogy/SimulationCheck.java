package dev.sunthread.genealogy;

import dev.sunthread.simulator.Chance;
import dev.sunthread.simulator.SimulatedPlant;
import dev.sunthread.simulator.told.Rates;
import dev.sunthread.simulator.world.Thing;
import dev.sunthread.simulator.world.World;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** Compares what the trace says of simulated plants with what truly is in what: ever, now, and at a random time. */
final class SimulationCheck {

    /** What holds matter, so that something can be in it. */
    private static final Set<Thing.Kind> HOLDERS = EnumSet.of(Thing.Kind.LOT, Thing.Kind.CONTAINER, Thing.Kind.UNIT);

    private final Tally tally;

    SimulationCheck(Tally tally) {
        this.tally = tally;
    }

    /** The result for so many plants from a seed on. */
    static Tally of(Rates rates, long seed, int plants) {
        SimulationCheck check = new SimulationCheck(new Tally());
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
            Map<Thing, Certainty> answer = trace.forward(suspect, question);
            contents.forEach((holder, content) -> {
                if (!holder.equals(suspect)) {
                    compare(
                            new Tally.Odd(
                                    seed,
                                    said(question),
                                    suspect.name(),
                                    holder.name(),
                                    String.valueOf(answer.get(holder))),
                            content.contains(suspect),
                            answer.get(holder));
                }
            });
        }
    }

    private void compare(Tally.Odd pair, boolean isTrue, @org.jspecify.annotations.Nullable Certainty answered) {
        if (isTrue) {
            tally.truePairs++;
        }
        if (isTrue && answered == null) {
            tally.miss(pair);
        } else if (!isTrue && answered != null) {
            tally.excess(answered, pair);
        }
    }

    private static String said(Question question) {
        return question.isEver() ? "ever" : question.equals(Question.NOW) ? "now" : "at " + question.instant();
    }
}
