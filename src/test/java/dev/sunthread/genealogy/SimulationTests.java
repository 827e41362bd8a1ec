package dev.sunthread.genealogy;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.simulator.told.Fault;
import dev.sunthread.simulator.told.Rates;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The trace against what truly is in what, in simulated plants that record it badly: it misses nothing, and is certain
 * of nothing untrue unless a record is false. {@code -Dsunthread.simulated=10000} runs that many plants for each kind of
 * fault, {@code -Dsunthread.seed=7} others.
 */
class SimulationTests {

    private static final int PLANTS = Integer.getInteger("sunthread.simulated", 12);
    private static final long SEED = Long.getLong("sunthread.seed", 0) * 1_000_000;

    static Stream<Arguments> kindsOfFault() {
        return FaultKinds.held().entrySet().stream().map(kind -> Arguments.of(kind.getKey(), kind.getValue()));
    }

    static Stream<Arguments> kindsCountedApart() {
        return FaultKinds.apart().entrySet().stream().map(kind -> Arguments.of(kind.getKey(), kind.getValue()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kindsOfFault")
    void nothingIsMissedAndOnlyTheTruthIsCertain(String kind, Rates rates) {
        assertHeld(kind, rates, SimulationCheck.of(rates, SEED, PLANTS));
    }

    /** Plants of which something was missed or falsely certain once. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "none, 3000030",
        "none, 12000129",
        "lost step, 3000052",
        "lost step, 3000153",
        "lost step, 3000179",
        "voided scan, 3000141",
        "voided scan, 3000362",
        "lost use, 12000159",
        "many at once, 34000019",
        "lost installation, 3000128",
        "voided scan, 3000332"
    })
    void nothingIsMissedInAPlantThatOnceShowedAFault(String kind, long seed) {
        Rates rates = Objects.requireNonNull(FaultKinds.held().get(kind));
        assertHeld(kind, rates, SimulationCheck.of(rates, seed, 1));
    }

    private static void assertHeld(String kind, Rates rates, Tally tally) {
        assertThat(tally.truePairs).isPositive();
        assertThat(tally.misses).as("missed with %s", kind).isEmpty();
        if (Stream.of(Fault.values()).noneMatch(fault -> fault.isFalse() && rates.of(fault) > 0)) {
            assertThat(tally.lies).as("falsely certain with %s", kind).isEmpty();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kindsCountedApart")
    void whatNoRecordTellsIsMissedSeldom(String kind, Rates rates) {
        Tally tally = SimulationCheck.of(rates, SEED, PLANTS / 4);
        assertThat((double) tally.missed / tally.truePairs).as(kind).isLessThan(0.1);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kindsOfFault")
    void bothDirectionsFindTheSameAndWhatIsFoundAtATimeIsFoundEver(String kind, Rates rates) {
        for (int i = 0; i < Math.max(1, PLANTS / 40); i++) {
            new DirectionCheck(SEED + i, rates).assertAgreement();
        }
    }
}
