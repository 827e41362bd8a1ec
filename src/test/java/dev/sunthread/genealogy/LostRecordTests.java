package dev.sunthread.genealogy;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.simulator.SimulatedPlant;
import dev.sunthread.simulator.told.Fault;
import dev.sunthread.simulator.told.Rates;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * A plant that records everything but one record, of any kind whose loss another record shows: the trace misses nothing
 * and is certain of nothing untrue. {@code -Dsunthread.lost=2000} takes that many plants, {@code -Dsunthread.seed=7}
 * others.
 */
class LostRecordTests {

    private static final long SEED = Long.getLong("sunthread.seed", 0) * 1_000_000;
    private static final int PLANTS = Integer.getInteger("sunthread.lost", 60);
    private static final Rates WHOLE = Rates.NONE.with(Fault.LOST_LOT_SCAN, 0.5);
    private static final List<Fault> SHOWN = Arrays.stream(Fault.values())
            .filter(fault -> !fault.isCountedApart() && !fault.isFalse())
            .filter(fault -> fault.name().startsWith("LOST_")
                    || fault == Fault.VOIDED_SCAN
                    || fault == Fault.UNREADABLE_LINE
                    || fault == Fault.DOUBLED_SCAN)
            .toList();

    @Test
    void oneLostRecordHidesNothing() {
        Tally all = new Tally();
        LongStream.range(SEED, SEED + PLANTS).forEach(seed -> check(seed, fault(seed), all));
        assertHeld(all);
    }

    private static Fault fault(long seed) {
        return SHOWN.get((int) (seed % SHOWN.size()));
    }

    private static void check(long seed, Fault fault, Tally all) {
        // some faults befall only what a plant does that has their habit: so does this one, and they befall nothing
        SimulatedPlant plant = SimulatedPlant.of(seed, "p", WHOLE.with(fault, Double.MIN_VALUE));
        without(plant, seed, fault).ifPresent(told -> new SimulationCheck(all, any -> {}).compare(seed, plant, told));
    }

    /** What the plant told but for one record that this fault befell; nothing if it befell none. */
    private static Optional<SimulatedTrace> without(SimulatedPlant plant, long seed, Fault fault) {
        List<Said> whole = SimulatedTrace.said(plant.told());
        List<Said> faulty = SimulatedTrace.said(
                SimulatedPlant.of(seed, "p", WHOLE.with(fault, 1)).told());
        List<Said> missing = whole.stream().filter(one -> !faulty.contains(one)).toList();
        if (missing.isEmpty()) {
            return Optional.empty();
        }
        Said gone = missing.get((int) (seed / SHOWN.size() % missing.size()));
        Stream<Said> instead = faulty.stream().filter(one -> one.id().equals(gone.id()));
        return Optional.of(SimulatedTrace.of(
                "p",
                whole.stream()
                        .flatMap(one -> one == gone ? instead : Stream.of(one))
                        .toList()));
    }

    private static void assertHeld(Tally tally) {
        assertThat(tally.truePairs).isPositive();
        assertThat(tally.misses).as("missed").isEmpty();
        assertThat(tally.lies).as("falsely certain").isEmpty();
    }
}
