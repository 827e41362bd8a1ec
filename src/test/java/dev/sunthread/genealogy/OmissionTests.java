package dev.sunthread.genealogy;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.simulator.SimulatedPlant;
import dev.sunthread.simulator.told.Fault;
import dev.sunthread.simulator.told.Rates;
import dev.sunthread.simulator.world.Thing;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Leaving out any one record whose demand remains may only add to an answer or weaken a class: nothing that was found
 * before is gone, and nothing that was less is certain, but where only a removal told that something had ended.
 */
class OmissionTests {

    private static final long SEED = Long.getLong("sunthread.seed", 0) * 1_000_000;
    private static final int PLANTS = Integer.getInteger("sunthread.omissions", 12);

    @ParameterizedTest
    @EnumSource(
            names = {
                "LOST_LOT_SCAN",
                "LOST_USE",
                "LOST_STEP",
                "LOST_CHARGE",
                "LOST_INSTALLATION",
                "LOST_INSTALLATION_WORKED_ON",
                "LOST_REMOVAL",
                "LOST_CLEAN_POINT",
                "LOST_DISCHARGE",
                "LOST_TRAY_LOAD",
                "LOST_RUN_MEMBER",
                "LOST_COMPONENT",
                "LOST_RECEIPT"
            })
    void leavingOutOneRecordOnlyAddsToAnAnswerOrWeakensAClass(Fault fault) {
        long left = LongStream.range(SEED, SEED + PLANTS)
                .filter(seed -> leavesOutOne(seed, fault))
                .count();
        assertThat(left).isPositive();
    }

    private static boolean leavesOutOne(long seed, Fault fault) {
        List<Said> whole =
                SimulatedTrace.said(SimulatedPlant.of(seed, "p", Rates.NONE).told());
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
        assertOnlyWeaker(seed, fault, SimulatedTrace.of("p", whole), SimulatedTrace.of("p", without));
        return true;
    }

    private static void assertOnlyWeaker(long seed, Fault fault, SimulatedTrace before, SimulatedTrace after) {
        for (Question question : List.of(Question.EVER, Question.NOW)) {
            for (Thing suspect : after.nodes().keySet()) {
                Map<Thing, Certainty> now = after.forward(suspect, question);
                Map<Thing, Certainty> was =
                        before.nodes().containsKey(suspect) ? before.forward(suspect, question) : Map.of();
                assertThat(now.keySet())
                        .as("plant %d with %s, %s from %s", seed, fault, question, suspect)
                        .containsAll(was.keySet().stream()
                                .filter(after.nodes()::containsKey)
                                .toList());
                if (fault != Fault.LOST_REMOVAL && fault != Fault.LOST_DISCHARGE) {
                    now.forEach((thing, certainty) -> assertThat(
                                    certainty != Certainty.CERTAIN || was.get(thing) == Certainty.CERTAIN)
                            .as(
                                    "plant %d with %s, %s from %s: %s is certain now",
                                    seed, fault, question, suspect, thing)
                            .isTrue());
                }
            }
        }
    }
}
