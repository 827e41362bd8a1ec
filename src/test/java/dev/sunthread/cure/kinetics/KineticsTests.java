package dev.sunthread.cure.kinetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.sunthread.cure.profile.Readings;
import dev.sunthread.cure.profile.Segment;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Degree of cure and equivalent time by published models and closed formulas. */
class KineticsTests {

    /** 0.05 per minute whatever the temperature. */
    private static final Arrhenius CONSTANT = new Arrhenius(0.05 / 60, 0);

    /** Composite resin 8552: a check of the computation, not a property of any adhesive of the line. */
    private static final Kinetics RESIN_8552 = new Autocatalytic(
            new Arrhenius(0, 0), new Arrhenius(7.0e4, 65_000), 0.5, 1.5, new Diffusion(30, -1.5148, 5.171e-3));

    // closed formulas of reactions of nth order: 1 - exp(-kt), and 1 - (1 + (n - 1) kt)^(1 / (1 - n))
    @ParameterizedTest
    @CsvSource({
        "1, 10, 0.393469", "1, 30, 0.776870", "1, 60, 0.950213",
        "1.5, 10, 0.360000", "1.5, 30, 0.673469", "1.5, 60, 0.840000",
        "2, 10, 0.333333", "2, 30, 0.600000", "2, 60, 0.750000"
    })
    void nthOrderFollowsItsClosedFormula(double order, double minutes, double degree) {
        double found = DegreeOfCure.after(new NthOrder(CONSTANT, order), 0, held(100, minutes));
        assertThat(found).isCloseTo(degree, within(5e-7));
    }

    // published kinetics of the epoxy 8552, integrated by another solver (LSODA, relative tolerance 1e-10)
    @ParameterizedTest
    @CsvSource({
        "120, 0.0217, 0.0572, 0.1332, 0.3183, 0.5475",
        "130, 0.0314, 0.1032, 0.2503, 0.5198, 0.6384",
        "150, 0.0823, 0.3271, 0.6200, 0.7360, 0.7735",
        "180, 0.3761, 0.8058, 0.8792, 0.9092, 0.9299"
    })
    void autocatalyticWithDiffusionFollowsTheTable(
            double celsius, double after10, double after30, double after60, double after120, double after240) {
        double[] degrees = {after10, after30, after60, after120, after240};
        double[] minutes = {10, 30, 60, 120, 240};
        for (int i = 0; i < minutes.length; i++) {
            assertThat(DegreeOfCure.after(RESIN_8552, 0.01, held(celsius, minutes[i])))
                    .isCloseTo(degrees[i], within(5e-5));
        }
    }

    // published kinetics of the epoxy 8552, rates computed from the formula
    @ParameterizedTest
    @CsvSource({
        "120, 1.619141e-4, 5.180880e-5",
        "130, 2.651509e-4, 8.484699e-5",
        "150, 6.630352e-4, 2.121711e-4",
        "180, 2.252799e-3, 7.208955e-4"
    })
    void ratesAreThoseOfTheFormula(double celsius, double k, double rate) {
        double kelvin = Arrhenius.kelvin(celsius);
        assertThat(new Arrhenius(7.0e4, 65_000).at(kelvin)).isCloseTo(k, within(k * 5e-7));
        assertThat(RESIN_8552.rate(kelvin, 0.2)).isCloseTo(rate, within(rate * 5e-7));
    }

    // activation energy of a filled conductive adhesive by isothermal calorimetry; times computed from the formula
    @ParameterizedTest
    @CsvSource({"140, 115.26", "130, 228.72", "125, 326.36", "120, 469.94", "100, 2227.5", "160, 32.19"})
    void anHourAt150IsLongerWhereItIsColder(double celsius, double minutes) {
        double equivalent = new EquivalentTime(94_900, celsius).seconds(held(150, 60)) / 60;
        assertThat(equivalent).isCloseTo(minutes, within(minutes * 5e-5));
    }

    @Test
    void profileOfAnOvenIsWorthALittleMoreThanItsHold() {
        List<Segment> profile = Readings.of(
                        new double[] {0, 600, 1200, 4800, 5400}, new double[] {25, 100, 150, 150, 60})
                .segments();
        // the same profile by a trapezoid of 90,001 points
        assertThat(new EquivalentTime(94_900, 150).seconds(profile) / 60).isCloseTo(64.533, within(5e-4));
    }

    // the rule of thumb that ten kelvin halve the time is stated by suppliers of epoxies; at 94.9 kJ/mol it does not
    // hold
    @Test
    void tenKelvinDoNotAlwaysHalveTheTime() {
        assertThat(new EquivalentTime(94_900, 25).factor(35)).isCloseTo(3.46, within(5e-3));
        assertThat(new EquivalentTime(94_900, 150).factor(160)).isCloseTo(1.86, within(5e-3));
        assertThat(new EquivalentTime(53_000, 25).factor(35)).isCloseTo(2.0, within(0.01));
    }

    private static List<Segment> held(double celsius, double minutes) {
        return List.of(new Segment(0, celsius, minutes * 60, celsius));
    }
}
