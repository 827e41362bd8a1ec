package dev.sunthread.electrical.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.sunthread.electrical.diode.RtcFrance;
import dev.sunthread.kernel.Refused;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What curves say by themselves, by published points and with hostile ones. */
class CurveNumbersTests {

    @Test
    void axesOfThePublishedPointsAreInterpolated() {
        CurveNumbers numbers = CurveNumbers.of(RtcFrance.curve(), CurveMethod.USUAL);
        // linear interpolation of the points of Easwarakhanthan et al. (1986), recomputed in double precision
        assertThat(numbers.shortCircuit()).isCloseTo(0.7605, within(5e-8));
        assertThat(numbers.openCircuit()).isCloseTo(0.5726925, within(5e-8));
    }

    @Test
    void methodsOfMaximumPowerDifferByAsMuchAsThePublishedPointsSay() {
        // points of Easwarakhanthan et al. (1986), recomputed in double precision
        MaximumPower largest = PowerMethod.LARGEST_POINT.of(RtcFrance.curve());
        assertThat(largest.watts()).isCloseTo(0.3100545, within(5e-8));
        assertThat(largest.volts()).isEqualTo(0.4590);
        MaximumPower parabola = PowerMethod.THREE_POINT.of(RtcFrance.curve());
        assertThat(parabola.watts()).isCloseTo(0.3108458, within(5e-8));
        assertThat(parabola.volts()).isCloseTo(0.450480, within(5e-7));
        MaximumPower quartic = new PowerMethod(4, 7).of(RtcFrance.curve());
        assertThat(quartic.watts()).isCloseTo(0.3105958, within(5e-8));
        assertThat(quartic.volts()).isCloseTo(0.451117, within(5e-7));
    }

    @Test
    void leastSquaresOverTheWindowIsThatOfAnotherSolver() {
        // points of Easwarakhanthan et al. (1986) from 0.3585 to 0.4960 V, fitted by NumPy polyfit
        MaximumPower fitted = PowerMethod.LEAST_SQUARES.of(RtcFrance.curve());
        assertThat(fitted.watts()).isCloseTo(0.3108510, within(5e-8));
        assertThat(fitted.volts()).isCloseTo(0.450905, within(5e-6));
        Curve reversed = Curve.of(reversed(RtcFrance.volts()), reversed(RtcFrance.amperes()));
        assertThat(PowerMethod.LEAST_SQUARES.of(reversed).watts()).isCloseTo(fitted.watts(), within(1e-12));
    }

    @Test
    void slopesAreThoseOfLinesThroughTheEnds() {
        CurveNumbers numbers = CurveNumbers.of(RtcFrance.curve(), CurveMethod.USUAL);
        // points of Easwarakhanthan et al. (1986), recomputed in double precision
        assertThat(numbers.shunt()).isCloseTo(69.836, within(5e-4));
        assertThat(numbers.series()).isCloseTo(0.08550, within(5e-6));
        assertThat(Line.through(RtcFrance.curve(), IntStream.range(0, 5)).atZero())
                .isCloseTo(0.760474, within(5e-7));
    }

    @Test
    void reversedSweepSaysTheSameAndIsTold() {
        Curve reversed = Curve.of(reversed(RtcFrance.volts()), reversed(RtcFrance.amperes()));
        CurveNumbers numbers = CurveNumbers.of(reversed, CurveMethod.USUAL);
        assertThat(numbers.openCircuit()).isCloseTo(0.5726925, within(5e-8));
        assertThat(numbers.remarks())
                .anyMatch(remark -> remark.english().startsWith("Swept from open circuit to short circuit"));
    }

    @Test
    void repeatedVoltagesAreTold() {
        double[] volts = RtcFrance.volts();
        volts[4] = volts[5];
        assertThat(Curve.of(volts, RtcFrance.amperes()).remarks())
                .anyMatch(remark -> remark.english().contains("repeat a voltage"));
    }

    @Test
    void notANumberIsRefused() {
        double[] amperes = RtcFrance.amperes();
        amperes[3] = Double.NaN;
        assertThatThrownBy(() -> Curve.of(RtcFrance.volts(), amperes))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("Point 4 is not a number");
    }

    @Test
    void threePointsAreRefused() {
        assertThatThrownBy(() -> Curve.of(new double[] {0, 0.3, 0.6}, new double[] {1, 0.9, -0.1}))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("too short");
    }

    @Test
    void amperesAmongMilliamperesAreRefused() {
        double[] amperes = RtcFrance.amperes();
        amperes[7] *= 1000;
        assertThatThrownBy(() -> Curve.of(RtcFrance.volts(), amperes))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("mixed up");
    }

    @Test
    void sweepThatBeginsAboveShortCircuitIsExtrapolatedOnlyFromNearby() {
        double[] volts = {0.004, 0.008, 0.012, 0.3, 0.5, 0.6};
        double[] amperes = {0.999, 0.998, 0.997, 0.9, 0.4, -0.1};
        CurveNumbers numbers = CurveNumbers.of(Curve.of(volts, amperes), CurveMethod.USUAL);
        assertThat(numbers.shortCircuit()).isCloseTo(1.0, within(1e-9));
        assertThat(numbers.remarks()).anyMatch(remark -> remark.english().startsWith("No point at or below 0 V"));
        volts[0] = 0.1;
        volts[1] = 0.15;
        volts[2] = 0.2;
        CurveNumbers without = CurveNumbers.of(Curve.of(volts, amperes), CurveMethod.USUAL);
        assertThatThrownBy(without::shortCircuit)
                .isInstanceOf(Refused.class)
                .hasMessageContaining("too far from short circuit");
        assertThat(without.openCircuit()).isCloseTo(0.58, within(1e-9));
        assertThat(without.power().watts()).isGreaterThan(0.26);
    }

    @Test
    void sweepWithoutOpenCircuitIsRefused() {
        double[] amperes = Arrays.stream(RtcFrance.amperes()).map(i -> i + 1).toArray();
        assertThatThrownBy(() -> CurveNumbers.of(Curve.of(RtcFrance.volts(), amperes), CurveMethod.USUAL)
                        .openCircuit())
                .isInstanceOf(Refused.class)
                .hasMessageContaining("never reaches open circuit");
    }

    private static double[] reversed(double[] numbers) {
        double[] reversed = new double[numbers.length];
        for (int i = 0; i < numbers.length; i++) {
            reversed[i] = numbers[numbers.length - 1 - i];
        }
        return reversed;
    }
}
