package dev.sunthread.electrical.translate;

import dev.sunthread.electrical.curve.Curve.Point;

/**
 * IEC 60891 procedure 1, the same in the editions of 2009 and 2021:
 * {@code I2 = I1 + Isc1 (G2 / G1 - 1) + alpha (T2 - T1)},
 * {@code V2 = V1 - Rs (I2 - I1) - kappa I2 (T2 - T1) + beta (T2 - T1)}.
 *
 * @param alpha change of the short-circuit current in A/K
 * @param beta change of the open-circuit voltage in V/K
 * @param series the inner series resistance in ohms
 * @param kappa change of it in ohm/K
 */
public record Procedure1(Conditions to, double alpha, double beta, double series, double kappa) implements Translation {

    @Override
    public String words() {
        return "IEC 60891:2009 and 2021, procedure 1";
    }

    @Override
    public Point translate(Point measured, Measured under) {
        Conditions from = under.conditions();
        double warmer = to.celsius() - from.celsius();
        double amperes =
                measured.amperes() + under.shortCircuit() * (to.irradiance() / from.irradiance() - 1) + alpha * warmer;
        double volts =
                measured.volts() - series * (amperes - measured.amperes()) - kappa * amperes * warmer + beta * warmer;
        return new Point(volts, amperes);
    }
}
