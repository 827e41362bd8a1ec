package dev.sunthread.electrical.diode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.sunthread.electrical.curve.Curve;
import dev.sunthread.electrical.curve.CurveMethod;
import dev.sunthread.electrical.curve.CurveNumbers;
import dev.sunthread.electrical.curve.PowerMethod;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** The model of one diode fitted to published points and to curves of known parameters. */
class DiodeFitTests {

    @Test
    void implicitResidualGivesTheParametersOfTheLiterature() {
        FittedDiode fit = DiodeFit.of(RtcFrance.curve(), Residual.IMPLICIT);
        SingleDiode diode = fit.diode();
        // optimum of the literature for these points (from memory), reproduced in double precision to more digits
        assertThat(diode.photo()).isCloseTo(0.7607755, within(5e-8));
        assertThat(diode.saturation()).isCloseTo(3.230207e-7, within(2e-13));
        assertThat(diode.ideality(1, RtcFrance.KELVIN)).isCloseTo(1.4811836, within(3e-6));
        assertThat(diode.series()).isCloseTo(0.03637709, within(5e-9));
        assertThat(diode.shunt()).isCloseTo(53.71851, within(5e-5));
        assertThat(fit.rootMeanSquare()).isCloseTo(9.8602188e-4, within(5e-12));
    }

    @Test
    void modelCurrentGivesOtherParametersAndASmallerError() {
        FittedDiode fit = DiodeFit.of(RtcFrance.curve(), Residual.MODEL_CURRENT);
        SingleDiode diode = fit.diode();
        // recomputed in double precision; the literature gives the root mean square as 7.7301e-4 (from memory)
        assertThat(diode.photo()).isCloseTo(0.7607880, within(5e-8));
        assertThat(diode.saturation()).isCloseTo(3.106845e-7, within(1e-13));
        assertThat(diode.ideality(1, RtcFrance.KELVIN)).isCloseTo(1.4772677, within(3e-6));
        assertThat(diode.series()).isCloseTo(0.03654695, within(5e-9));
        assertThat(diode.shunt()).isCloseTo(52.88978, within(5e-5));
        assertThat(fit.rootMeanSquare()).isCloseTo(7.7300627e-4, within(5e-12));
    }

    @Test
    void modelOfTheLiteratureHasItsMaximumPowerAndAxes() {
        SingleDiode diode = DiodeFit.of(RtcFrance.curve(), Residual.IMPLICIT).diode();
        double[] volts =
                IntStream.rangeClosed(0, 6_000).mapToDouble(i -> i * 1e-4).toArray();
        CurveNumbers numbers = CurveNumbers.of(sampled(diode, volts), new CurveMethod(PowerMethod.THREE_POINT, 5, 4));
        // recomputed in double precision from the literature's optimum
        assertThat(numbers.power().watts()).isCloseTo(0.3106520, within(5e-8));
        assertThat(numbers.power().volts()).isCloseTo(0.45064, within(5e-6));
        assertThat(numbers.power().amperes()).isCloseTo(0.68935, within(1e-5));
        assertThat(numbers.shortCircuit()).isCloseTo(0.7602604, within(5e-8));
        assertThat(numbers.openCircuit()).isCloseTo(0.5727851, within(1e-7));
        assertThat(numbers.fillFactor()).isCloseTo(0.713379, within(1e-6));
    }

    /** Parameters come back to a millionth: the curve holds nothing else. */
    @Property(tries = 60)
    void curveOfKnownParametersGivesThemBack(
            @ForAll @DoubleRange(min = 0.5, max = 8) double photo,
            @ForAll @DoubleRange(min = 1.0, max = 2.0) double ideality,
            @ForAll @Scale(4) @DoubleRange(min = 0.005, max = 0.05) double series,
            @ForAll @DoubleRange(min = 20, max = 2_000) double shunt) {
        SingleDiode truth = truth(photo, ideality, series, shunt);
        FittedDiode fit = DiodeFit.of(sampled(truth, volts()), Residual.MODEL_CURRENT);
        assertThat(fit.diode().photo()).isCloseTo(photo, within(1e-6 * photo));
        assertThat(fit.diode().slope()).isCloseTo(truth.slope(), within(1e-5 * truth.slope()));
        assertThat(fit.diode().series()).isCloseTo(series, within(1e-5 * series + 1e-7));
        assertThat(fit.diode().conductance()).isCloseTo(truth.conductance(), within(1e-5));
    }

    /** With noise of half a thousandth of the current, parameters come back to some per cent. */
    @Property(tries = 40)
    void noisyCurveGivesThemBackNearly(@ForAll long seed) {
        SingleDiode truth = truth(4, 1.4, 0.01, 200);
        Random noise = new Random(seed);
        Curve clean = sampled(truth, volts());
        Curve noisy =
                clean.moved(point -> new Curve.Point(point.volts(), point.amperes() + noise.nextGaussian() * 0.002));
        SingleDiode fit = DiodeFit.of(noisy, Residual.MODEL_CURRENT).diode();
        assertThat(fit.photo()).isCloseTo(4, within(0.02));
        assertThat(fit.slope()).isCloseTo(truth.slope(), within(0.1 * truth.slope()));
        assertThat(fit.series()).isCloseTo(0.01, within(0.002));
    }

    private static SingleDiode truth(double photo, double ideality, double series, double shunt) {
        double slope = ideality * SingleDiode.thermalVoltage(298.15);
        return new SingleDiode(photo, photo / Math.expm1(0.62 / slope), slope, series, 1 / shunt);
    }

    private static double[] volts() {
        return IntStream.range(0, 60).mapToDouble(i -> -0.05 + i * 0.0116).toArray();
    }

    static Curve sampled(SingleDiode diode, double[] volts) {
        return Curve.of(
                volts, java.util.Arrays.stream(volts).map(diode::current).toArray());
    }
}
