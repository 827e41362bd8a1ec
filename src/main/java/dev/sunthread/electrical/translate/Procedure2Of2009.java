package dev.sunthread.electrical.translate;

import dev.sunthread.electrical.curve.Curve.Point;

/**
 * IEC 60891:2009 procedure 2, with relative coefficients:
 * {@code I2 = I1 (1 + alpha (T2 - T1)) G2 / G1},
 * {@code V2 = V1 + Voc1 (beta (T2 - T1) + a ln(G2 / G1)) - Rs (I2 - I1) - kappa I2 (T2 - T1)}.
 *
 * @param alpha relative change of the short-circuit current per kelvin
 * @param beta relative change of the open-circuit voltage per kelvin
 * @param logarithmic the factor a of the irradiance for the open-circuit voltage
 */
public record Procedure2Of2009(Conditions to, double alpha, double beta, double logarithmic, SeriesResistance series)
        implements Translation {

    @Override
    public String words() {
        return "IEC 60891:2009, procedure 2";
    }

    @Override
    public Point translate(Point measured, Measured under) {
        Conditions from = under.conditions();
        double warmer = to.celsius() - from.celsius();
        double brighter = to.irradiance() / from.irradiance();
        double amperes = measured.amperes() * (1 + alpha * warmer) * brighter;
        double volts = measured.volts()
                + under.openCircuit() * (beta * warmer + logarithmic * Math.log(brighter))
                - series.ohms() * (amperes - measured.amperes())
                - series.perKelvin() * amperes * warmer;
        return new Point(volts, amperes);
    }
}
