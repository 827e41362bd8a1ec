package dev.sunthread.electrical.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.sunthread.kernel.Refused;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Dark curves of a diode with known parameters: 1e-9 A, 0.04 V, 0.05 ohm in series, 500 ohm beside it. */
class DarkCurveTests {

    private static final double SERIES = 0.05;
    private static final double SHUNT = 500;

    /** Voltages of the junction from -0.1 V on. */
    private static final double[] JUNCTION =
            IntStream.rangeClosed(0, 95).mapToDouble(i -> -0.1 + i * 0.01).toArray();

    private static final double[] AMPERES = Arrays.stream(JUNCTION)
            .map(volts -> 1e-9 * Math.expm1(volts / 0.04) + volts / SHUNT)
            .toArray();

    private static final double[] VOLTS = IntStream.range(0, JUNCTION.length)
            .mapToDouble(i -> JUNCTION[i] + AMPERES[i] * SERIES)
            .toArray();

    @Test
    void forwardVoltageIsThatOfTheModel() {
        // the model's own equation: 0.8 V over the junction and the drop over the series resistance
        assertThat(of(AMPERES, AMPERES[90]).forward()).isCloseTo(0.8 + AMPERES[90] * SERIES, within(1e-9));
    }

    @Test
    void slopesComeNearTheModelsResistances() {
        DarkCurve numbers = of(AMPERES, 0.1);
        // around no voltage the diode itself conducts less than a thousandth of the shunt
        assertThat(numbers.shunt()).isCloseTo(SHUNT + SERIES, within(0.5));
        // at the highest current the diode adds its slope over the current, 0.04 V over about 2 A
        assertThat(numbers.series()).isCloseTo(SERIES + 0.04 / AMPERES[93], within(0.002));
    }

    @Test
    void curveToldWithTheSignOfALightSourceIsTurnedOver() {
        double[] turned = Arrays.stream(AMPERES).map(i -> -i).toArray();
        Curve curve = Curve.dark(VOLTS, turned);
        assertThat(curve.remarks())
                .singleElement()
                .hasToString("Forward current was told as negative; the curve is" + " turned over");
        assertThat(DarkCurve.of(curve, 0.1, 5)).isEqualTo(of(AMPERES, 0.1));
    }

    @Test
    void currentThatIsNeverReachedIsRefused() {
        assertThatThrownBy(() -> of(AMPERES, 100))
                .isInstanceOf(Refused.class)
                .hasMessage("The dark curve never reaches 100 A");
    }

    @Test
    void milliamperesAmongAmperesAreRefused() {
        double[] mixed = AMPERES.clone();
        mixed[85] *= 1000;
        assertThatThrownBy(() -> of(mixed, 0.1)).isInstanceOf(Refused.class).hasMessageContaining("mixed up");
    }

    private static DarkCurve of(double[] amperes, double at) {
        return DarkCurve.of(Curve.dark(VOLTS, amperes), at, 5);
    }
}
