package dev.sunthread.electrical.diode;

import dev.sunthread.electrical.curve.Curve;

/**
 * The cell of 57 mm diameter at 33 degrees Celsius and 1000 W/m2 of Easwarakhanthan et al. (1986), as reprinted in Li et
 * al., Energy Conversion and Management 205 (2020) 112443.
 */
public final class RtcFrance {

    public static final double KELVIN = 306.15;

    private static final double[] VOLTS = {
        -0.2057, -0.1291, -0.0588, 0.0057, 0.0646, 0.1185, 0.1678, 0.2132, 0.2545, 0.2924, 0.3269, 0.3585, 0.3873,
        0.4137, 0.4373, 0.4590, 0.4784, 0.4960, 0.5119, 0.5265, 0.5398, 0.5521, 0.5633, 0.5736, 0.5833, 0.5900
    };
    private static final double[] AMPERES = {
        0.7640, 0.7620, 0.7605, 0.7605, 0.7600, 0.7590, 0.7570, 0.7570, 0.7555, 0.7540, 0.7505, 0.7465, 0.7385, 0.7280,
        0.7065, 0.6755, 0.6320, 0.5730, 0.4990, 0.4130, 0.3165, 0.2120, 0.1035, -0.0100, -0.1230, -0.2100
    };

    private RtcFrance() {}

    public static Curve curve() {
        return Curve.of(VOLTS, AMPERES);
    }

    public static double[] volts() {
        return VOLTS.clone();
    }

    public static double[] amperes() {
        return AMPERES.clone();
    }
}
