package dev.sunthread.electrical.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.sunthread.electrical.diode.RtcFrance;
import dev.sunthread.electrical.diode.SingleDiode;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Steps in the curve of a string of ten cells whose weak ones are bypassed above their own current. */
class BypassStepsTests {

    private static final double BYPASS = 0.5;

    @Test
    void soundStringAndPublishedCellHaveNone() {
        assertThat(BypassSteps.of(string(4, 4, 4), 4, 0.02)).isEmpty();
        assertThat(BypassSteps.of(RtcFrance.curve(), 0.7605, 0.02)).isEmpty();
    }

    @Test
    void weakCellIsOneStepAtAboutTheVoltageOfTheOthers() {
        Curve curve = string(4, 4, 3);
        assertThat(BypassSteps.of(curve, 4, 0.02)).singleElement().satisfies(step -> {
            assertThat(step.volts()).isCloseTo(9 * 3.0 - BYPASS, within(2.5));
            assertThat(step.depth()).isGreaterThan(0.1);
        });
    }

    @Test
    void twoWeakCellsOfUnlikeCurrentAreTwoSteps() {
        assertThat(BypassSteps.of(string(4, 3.2, 2), 4, 0.02)).hasSize(2);
    }

    @Test
    void noiseIsNoStep() {
        Random noise = new Random(3);
        Curve noisy = string(4, 4, 4)
                .moved(point -> new Curve.Point(point.volts(), point.amperes() + noise.nextGaussian() * 0.004));
        assertThat(BypassSteps.of(noisy, 4, 0.02)).isEmpty();
    }

    /** Eight cells of one current, one each of two others; the voltage of each at a current, summed. */
    private static Curve string(double sound, double weak, double weaker) {
        double[] amperes =
                IntStream.range(0, 400).mapToDouble(i -> sound - i * 0.0102).toArray();
        double[] volts = IntStream.range(0, amperes.length)
                .mapToDouble(i -> 8 * cell(sound, amperes[i]) + cell(weak, amperes[i]) + cell(weaker, amperes[i]))
                .toArray();
        return Curve.of(volts, amperes);
    }

    private static double cell(double photo, double current) {
        double slope = 0.0925;
        SingleDiode cell = new SingleDiode(photo, photo / Math.expm1(3.0 / slope), slope, 0, 1e-4);
        double low = -50;
        double high = 4;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (cell.residual(middle, current) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.max(low, -BYPASS);
    }
}
