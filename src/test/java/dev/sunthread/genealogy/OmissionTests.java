package dev.sunthread.genealogy;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.simulator.SimulatedPlant;
import dev.sunthread.simulator.told.Fault;
import dev.sunthread.simulator.told.Rates;
import dev.sunthread.simulator.world.Thing;
import dev.sunthread.simulator.world.World;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Leaving out any one record whose demand remains may only add to an answer or weaken a class: nothing that was found
 * before is gone, and nothing that was less is certain, but where only a removal told that something had ended.
 *
 * <p>Some records tell by themselves where something was, with all that the clock leaves open, or prove by themselves
 * that something else was due, or that there was a lot: a step, an installation, a load, a discharge, what a run names,
 * how a lot came about. What such a record alone told or proved goes with it. Of these, what is so in the world must be
 * found still, and only what is not may go.
 */
class OmissionTests {

    private static final Set<Fault> OF_WHAT_TELLS_BY_ITSELF = EnumSet.of(
            Fault.LOST_STEP,
            Fault.LOST_DISCHARGE,
            Fault.LOST_INSTALLATION,
            Fault.LOST_INSTALLATION_WORKED_ON,
            Fault.LOST_TRAY_LOAD,
            Fault.LOST_RUN_MEMBER,
            Fault.LOST_MAKING);

    private static final long SEED = Long.getLong("sunthread.seed", 0) * 1_000_000;
    private static final int PLANTS = Integer.getInteger("sunthread.omissions", 12);

    @ParameterizedTest
    @EnumSource(
            names = {
                "LOST_LOT_SCAN",
                "LOST_USE",
                "LOST_STEP",
                "LOST_CHARGE",
                "LOST_CHARGE_LEFT_BEHIND",
                "LOST_INSTALLATION",
                "LOST_INSTALLATION_WORKED_ON",
                "LOST_REMOVAL",
                "LOST_CLEAN_POINT",
                "LOST_DISCHARGE",
                "LOST_TRAY_LOAD",
                "LOST_RUN_MEMBER",
                "LOST_COMPONENT",
                "LOST_RECEIPT",
                "LOST_MAKING",
                "LOST_FILLING"
            })
    void leavingOutOneRecordOnlyAddsToAnAnswerOrWeakensAClass(Fault fault) {
        long left = LongStream.range(SEED, SEED + PLANTS)
                .filter(seed -> leavesOutOne(seed, fault))
                .count();
        assertThat(left).isPositive();
    }

    /** Plants of which an answer once shrank. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "LOST_USE, 58",
        "LOST_STEP, 6000297",
        "LOST_CHARGE, 6000016",
        "LOST_CHARGE, 6000019",
        "LOST_CHARGE, 6000084",
        "LOST_CHARGE, 6000172",
        "LOST_CHARGE, 6000290",
        "LOST_DISCHARGE, 6000260",
        "LOST_INSTALLATION, 6000086",
        "LOST_INSTALLATION, 6000246",
        "LOST_REMOVAL, 6000239",
        "LOST_TRAY_LOAD, 6000146",
        "LOST_RUN_MEMBER, 6000137",
        "LOST_INSTALLATION_WORKED_ON, 6000239"
    })
    void leavingOutOneRecordOfAPlantThatOnceShrankDoesNoMore(Fault fault, long seed) {
        assertThat(leavesOutOne(seed, fault)).isTrue();
    }

    private static boolean leavesOutOne(long seed, Fault fault) {
        SimulatedPlant plant = SimulatedPlant.of(seed, "p", Rates.NONE);
        List<Said> whole = SimulatedTrace.said(plant.told());
        List<Said> faulty = SimulatedTrace.said(
                SimulatedPlant.of(seed, "p", Rates.NONE.with(fault, 1)).told());
        List<Said> missing = whole.stream().filter(one -> !faulty.contains(one)).toList();
        if (missing.isEmpty()) {
            return false;
        }
        Said gone = missing.get((int) (seed % missing.size()));
        Stream<Said> instead = faulty.stream().filter(one -> one.id().equals(gone.id()));
        List<Said> without = whole.stream()
                .flatMap(one -> one == gone ? instead : Stream.of(one))
                .toList();
        new Omission(seed, fault, plant.end(), SimulatedTrace.of("p", whole), SimulatedTrace.of("p", without))
                .assertOnlyWeaker();
        return true;
    }

    /** The answers with a record and without it, and the world of which they are. */
    private record Omission(long seed, Fault fault, World world, SimulatedTrace before, SimulatedTrace after) {

        void assertOnlyWeaker() {
            for (Question question : List.of(Question.EVER, Question.NOW)) {
                for (Thing suspect : after.nodes().keySet()) {
                    Map<Thing, Certainty> was =
                            before.nodes().containsKey(suspect) ? before.forward(suspect, question) : Map.of();
                    assertOnlyWeaker(question, suspect, was, after.forward(suspect, question));
                }
            }
        }

        private void assertOnlyWeaker(
                Question question, Thing suspect, Map<Thing, Certainty> was, Map<Thing, Certainty> now) {
            assertThat(now.keySet())
                    .as("plant %d with %s, %s from %s", seed, fault, question, suspect)
                    .containsAll(was.keySet().stream()
                            .filter(after.nodes()::containsKey)
                            .filter(thing -> mustStay(question, suspect, thing))
                            .toList());
            if (fault != Fault.LOST_REMOVAL && fault != Fault.LOST_DISCHARGE) {
                now.forEach((thing, certainty) -> assertThat(
                                certainty != Certainty.CERTAIN || was.get(thing) == Certainty.CERTAIN)
                        .as("plant %d with %s, %s from %s: %s is certain now", seed, fault, question, suspect, thing)
                        .isTrue());
            }
        }

        private boolean mustStay(Question question, Thing suspect, Thing thing) {
            return !OF_WHAT_TELLS_BY_ITSELF.contains(fault)
                    || (question.isEver() ? world.touched(thing) : world.present(thing)).contains(suspect);
        }
    }
}
