package dev.sunthread.electrical.translate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.sunthread.electrical.curve.Curve.Point;
import dev.sunthread.electrical.translate.Translation.Measured;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Translation of curves by the procedures of IEC 60891, on a point of 7.30 A and 27.0 V at 850 W/m2 and 45 degC. */
class TranslationTests {

    private static final Point POINT = new Point(27.0, 7.30);
    private static final Measured UNDER = new Measured(new Conditions(850, 45), 7.90, 34.0);
    private static final SeriesResistance SERIES = new SeriesResistance(0.35, 0.0012);

    @Test
    void firstProcedureGivesTheWorkedValue() {
        Point translated = new Procedure1(Conditions.STANDARD, 0.0045, -0.130, 0.35, 0.0012).translate(POINT, UNDER);
        // formula of IEC 60891 procedure 1 as coded in github.com/lbj2011/IVcorrection (BSD-3), recomputed
        assertThat(translated.amperes()).isCloseTo(8.604118, within(5e-7));
        assertThat(translated.volts()).isCloseTo(29.350058, within(5e-7));
    }

    @Test
    void secondProcedureOf2009GivesTheWorkedValue() {
        Point translated =
                new Procedure2Of2009(Conditions.STANDARD, 0.0005, -0.0035, 0.06, SERIES).translate(POINT, UNDER);
        // formula of IEC 60891:2009 procedure 2 from memory, recomputed
        assertThat(translated.amperes()).isCloseTo(8.502353, within(5e-7));
        assertThat(translated.volts()).isCloseTo(29.494772, within(5e-7));
    }

    @Test
    void secondProcedureOf2021GivesAnotherOne() {
        Procedure2Of2021.LightFactors light = new Procedure2Of2021.LightFactors(0.06, 0.002);
        Point translated = new Procedure2Of2021(0.0005, -0.0035, 37.0, light, SERIES).translate(POINT, UNDER);
        // formula of IEC 60891:2021 procedure 2 as coded in github.com/lbj2011/IVcorrection (BSD-3), recomputed
        assertThat(light.at(850)).isCloseTo(1.00980396, within(5e-9));
        assertThat(translated.amperes()).isCloseTo(8.503203, within(5e-7));
        assertThat(translated.volts()).isCloseTo(29.728696, within(5e-7));
    }

    /** There and back by irradiance alone is the point itself: the procedure is linear in it. */
    @Property
    void firstProcedureThereAndBackByIrradianceIsThePointItself(
            @ForAll @DoubleRange(min = 200, max = 1200) double irradiance) {
        Conditions there = new Conditions(irradiance, 45);
        Point moved = procedure1(there).translate(POINT, UNDER);
        double shortCircuit = 7.90 * irradiance / 850;
        Point back = procedure1(UNDER.conditions()).translate(moved, new Measured(there, shortCircuit, 34));
        assertThat(back.amperes()).isCloseTo(7.30, within(1e-9));
        assertThat(back.volts()).isCloseTo(27.0, within(1e-9));
    }

    /** By temperature the current comes back; the voltage but for kappa times the change of current times that of temperature. */
    @Property
    void firstProcedureThereAndBackByTemperatureIsNearlyThePoint(
            @ForAll @DoubleRange(min = -10, max = 80) double celsius) {
        Conditions there = new Conditions(850, celsius);
        Point moved = procedure1(there).translate(POINT, UNDER);
        Point back = procedure1(UNDER.conditions()).translate(moved, new Measured(there, 7.90, 34));
        assertThat(back.amperes()).isCloseTo(7.30, within(1e-9));
        double warmer = celsius - 45;
        assertThat(back.volts()).isCloseTo(27.0, within(0.0012 * 0.0045 * warmer * warmer + 1e-9));
    }

    @Property
    void currentOfTheSecondProceduresScalesWithIrradiance(
            @ForAll @DoubleRange(min = 200, max = 1200) double irradiance) {
        Procedure2Of2009 to = new Procedure2Of2009(new Conditions(irradiance, 45), 0.0005, -0.0035, 0.06, SERIES);
        assertThat(to.translate(POINT, UNDER).amperes()).isCloseTo(7.30 * irradiance / 850, within(1e-9));
    }

    private static Procedure1 procedure1(Conditions to) {
        return new Procedure1(to, 0.0045, -0.130, 0.35, 0.0012);
    }
}
