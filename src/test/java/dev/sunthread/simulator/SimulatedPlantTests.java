package dev.sunthread.simulator;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.simulator.told.Fault;
import dev.sunthread.simulator.told.Rates;
import dev.sunthread.simulator.told.Told;
import dev.sunthread.simulator.world.Happening;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Simulated plants are repeatable, varied, and record what befell them. */
class SimulatedPlantTests {

    /** Those that are what the plant does, not what it tells. */
    private static final Set<Fault> OF_THE_PLANT = EnumSet.of(
            Fault.DOUBLED_SERIAL, Fault.FOREIGN_LOAD, Fault.LOST_REGRADE, Fault.USED_BY_HAND, Fault.CHANGED_IN_A_ROW);

    @Test
    void theSameSeedGivesTheSamePlant() {
        Rates rates = Rates.NONE.with(Fault.LOST_STEP, 0.3).with(Fault.LATE, 0.3);
        assertThat(SimulatedPlant.of(7, "p", rates)).isEqualTo(SimulatedPlant.of(7, "p", rates));
        assertThat(SimulatedPlant.of(7, "p", rates)).isNotEqualTo(SimulatedPlant.of(8, "p", rates));
    }

    @Test
    void everyKindOfHappeningComesUp() {
        Set<String> kinds = LongStream.range(0, 60)
                .mapToObj(seed -> SimulatedPlant.of(seed, "p", Rates.NONE))
                .flatMap(plant -> plant.happenings().stream())
                .map(happening -> happening.getClass().getSimpleName())
                .collect(Collectors.toSet());
        assertThat(kinds)
                .contains("Receipt", "Filling", "Split", "Merge", "Blend", "Relabel", "Ending", "Recovery")
                .contains("Charge", "Discharge", "Purge", "Step", "Test", "Begin", "End")
                .contains("Birth", "Installation", "Removal", "Scrap", "Shipment", "Return")
                .contains("Load", "Unload", "Emptying");
    }

    @Test
    void thingsHappenInTheOrderOfTheirTimes() {
        assertThat(SimulatedPlant.of(7, "p", Rates.NONE).happenings().stream().map(Happening::at))
                .isSorted();
    }

    @ParameterizedTest
    @EnumSource(Fault.class)
    void everyFaultChangesWhatIsToldAndNotWhatHappens(Fault fault) {
        long changed = LongStream.range(0, 60)
                .filter(seed -> {
                    SimulatedPlant sound = SimulatedPlant.of(seed, "p", Rates.NONE);
                    SimulatedPlant faulty = SimulatedPlant.of(seed, "p", Rates.NONE.with(fault, 0.5));
                    if (!OF_THE_PLANT.contains(fault)) {
                        assertThat(faulty.happenings()).isEqualTo(sound.happenings());
                    }
                    return !faulty.told().equals(sound.told());
                })
                .count();
        assertThat(changed).isPositive();
    }

    @Test
    void whatIsToldHasItsOwnId() {
        Rates rates = Rates.NONE.with(Fault.DOUBLED_SCAN, 0.5).with(Fault.VOIDED_SCAN, 0.5);
        assertThat(SimulatedPlant.of(7, "p", rates).told().stream().map(Told::id))
                .doesNotHaveDuplicates();
    }
}
