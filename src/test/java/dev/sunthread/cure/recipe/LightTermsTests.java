package dev.sunthread.cure.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.sunthread.cure.light.Dose;
import dev.sunthread.cure.light.Lamp;
import dev.sunthread.cure.light.RadiometerReading;
import dev.sunthread.cure.profile.Readings;
import dev.sunthread.cure.profile.RecordingRule;
import dev.sunthread.cure.profile.SensorReadings;
import dev.sunthread.kernel.verdict.Judgement;
import dev.sunthread.kernel.verdict.Limits;
import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.kernel.verdict.Span;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Doses of ultraviolet light by hand. */
class LightTermsTests {

    private static final RadiometerReading STRONG = new RadiometerReading(4, 110);
    private static final RadiometerReading WEAK = new RadiometerReading(6, 90);

    @Test
    void doseIsIrradianceTimesTime() {
        // supplier's note on UV adhesives: 3000 mW/cm2 for 1 s and 1500 mW/cm2 for 2 s are both 3000 mJ/cm2
        assertThat(Dose.of(3000, 1)).isEqualTo(3000);
        assertThat(Dose.of(1500, 2)).isEqualTo(3000);
        assertThat(Dose.of(100, 30)).isEqualTo(3000);
        assertThat(Dose.sum(List.of(Span.exactly(1000), new Span(500, 700)))).isEqualTo(new Span(1500, 1700));
    }

    @Test
    void constantSensorGivesTheSame() {
        Span dose = Dose.along(sensor(), 30, 10);
        assertThat(dose.low()).isCloseTo(3000, within(1e-9));
        assertThat(judge(Limits.atLeast(2900), Lamp.UNKNOWN, sensor()).outcome())
                .isEqualTo(Outcome.PASSED);
    }

    @Test
    void lightInAGapHasNoUpperBoundAndNoneIsLessThanNone() {
        SensorReadings silent =
                SensorReadings.of("RAD-1", Readings.of(new double[] {0, 5, 30}, new double[] {100, 100, 100}));
        assertThat(Dose.along(silent, 30, 10)).isEqualTo(new Span(500, Double.POSITIVE_INFINITY));
        SensorReadings dark =
                SensorReadings.of("RAD-1", Readings.of(new double[] {0, 10, 20}, new double[] {-0.3, -0.3, 100}));
        assertThat(Dose.along(dark, 20, 10).low()).isGreaterThan(100 * 10 / 2 * 0.99);
    }

    @Test
    void betweenTwoReadingsOfTheRadiometerTheDoseIsBracketed() {
        Lamp lamp = new Lamp("365 nm", 200.0, STRONG, WEAK);
        assertThat(judge(Limits.atLeast(2700), lamp, null).outcome()).isEqualTo(Outcome.PASSED);
        assertThat(judge(Limits.atLeast(3000), lamp, null).outcome()).isEqualTo(Outcome.NOT_PROVEN);
        assertThat(judge(Limits.atLeast(3301), lamp, null).outcome()).isEqualTo(Outcome.FAILED);
    }

    @Test
    void oneReadingBracketsNothing() {
        Lamp lamp = new Lamp("365 nm", 200.0, STRONG, null);
        assertThat(judge(Limits.atLeast(1), lamp, null).sentence().english()).startsWith("Dose is not known");
    }

    @Test
    void bandHoursAndAgeOfTheReadingsAreJudgedBesideTheDose() {
        LightTerms terms = new LightTerms(
                Limits.atLeast(2700), Limits.between(80, 120), "365 nm", 1000.0, 24.0, new RecordingRule(10, 1e6));
        assertThat(judge(terms, new Lamp("365 nm", 200.0, STRONG, WEAK)).outcome())
                .isEqualTo(Outcome.PASSED);
        assertThat(judge(terms, new Lamp("395 nm", 200.0, STRONG, WEAK))
                        .sentence()
                        .english())
                .isEqualTo("Band is 395 nm, but 365 nm is demanded");
        assertThat(judge(terms, new Lamp("365 nm", 1200.0, STRONG, WEAK)).outcome())
                .isEqualTo(Outcome.FAILED);
        assertThat(judge(terms, new Lamp("365 nm", null, STRONG, WEAK)).outcome())
                .isEqualTo(Outcome.NOT_PROVEN);
        assertThat(judge(terms, new Lamp("365 nm", 200.0, STRONG, new RadiometerReading(30, 90)))
                        .outcome())
                .isEqualTo(Outcome.FAILED);
    }

    /** Doses of a bond that is lit twice add: 3000 mJ/cm2 each, where either alone would be too little. */
    @Test
    void dosesOfOneBondAdd() {
        LightTerms terms =
                new LightTerms(Limits.between(5900, 6100), null, null, null, null, new RecordingRule(10, 1e6));
        Measured once = new Measured(30, List.of(), List.of(sensor()), List.of(), Lamp.UNKNOWN);
        assertThat(terms.judge(once).outcome()).isEqualTo(Outcome.FAILED);
        assertThat(terms.judge(List.of(once, once)).outcome()).isEqualTo(Outcome.PASSED);
        assertThat(terms.judge(List.of(once, once, once)).outcome()).isEqualTo(Outcome.FAILED);
        Measured unrecorded = new Measured(30, List.of(), List.of(), List.of(), Lamp.UNKNOWN);
        assertThat(terms.judge(List.of(once, unrecorded)).outcome()).isEqualTo(Outcome.NOT_PROVEN);
    }

    private static SensorReadings sensor() {
        return SensorReadings.of(
                "RAD-1", Readings.of(new double[] {0, 7, 16, 25, 30}, new double[] {100, 100, 100, 100, 100}));
    }

    private static Judgement judge(Limits dose, Lamp lamp, @Nullable SensorReadings sensor) {
        Measured run = new Measured(30, List.of(), sensor == null ? List.of() : List.of(sensor), List.of(), lamp);
        return new LightTerms(dose, null, null, null, null, new RecordingRule(10, 1e6)).judge(run);
    }

    private static Judgement judge(LightTerms terms, Lamp lamp) {
        return terms.judge(new Measured(30, List.of(), List.of(), List.of(), lamp));
    }
}
