package dev.sunthread.electrical.translate;

import dev.sunthread.electrical.curve.Curve.Point;

/**
 * IEC 60891:2021 procedure 2, to 1000 W/m2 and 25 degrees Celsius; other than the edition of 2009:
 * {@code f = B2 ln^2(1000 / G) + B1 ln(1000 / G) + 1},
 * {@code I2 = I1 (1000 / G) / (1 + alpha (T - 25))},
 * {@code V2 = V1 - (Rs + kappa (T - 25)) (I2 - I1) - kappa I2 (25 - T) + Voc (beta (25 - T) f + 1 - 1 / f)}.
 *
 * @param alpha relative change of the short-circuit current per kelvin
 * @param beta relative change of the open-circuit voltage per kelvin
 * @param openCircuit the open-circuit voltage Voc under standard conditions, in volts
 * @param light the factors B1 and B2 of the irradiance
 */
public record Procedure2Of2021(
        double alpha, double beta, double openCircuit, LightFactors light, SeriesResistance series)
        implements Translation {

    /** The factors of the logarithm of the irradiance, and of its square. */
    public record LightFactors(double b1, double b2) {

        double at(double irradiance) {
            double dimmer = Math.log(Conditions.STANDARD.irradiance() / irradiance);
            return b2 * dimmer * dimmer + b1 * dimmer + 1;
        }
    }

    @Override
    public String words() {
        return "IEC 60891:2021, procedure 2";
    }

    @Override
    public Conditions to() {
        return Conditions.STANDARD;
    }

    @Override
    public Point translate(Point measured, Measured under) {
        Conditions from = under.conditions();
        double hotter = from.celsius() - to().celsius();
        double f = light.at(from.irradiance());
        double amperes = measured.amperes() * (to().irradiance() / from.irradiance()) / (1 + alpha * hotter);
        double volts = measured.volts()
                - (series.ohms() + series.perKelvin() * hotter) * (amperes - measured.amperes())
                + series.perKelvin() * amperes * hotter
                + openCircuit * (-beta * hotter * f + 1 - 1 / f);
        return new Point(volts, amperes);
    }
}
