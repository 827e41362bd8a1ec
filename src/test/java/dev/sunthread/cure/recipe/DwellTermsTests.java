package dev.sunthread.cure.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.sunthread.cure.light.Lamp;
import dev.sunthread.cure.profile.Readings;
import dev.sunthread.cure.profile.RecordingRule;
import dev.sunthread.cure.profile.SensorReadings;
import dev.sunthread.kernel.verdict.Judgement;
import dev.sunthread.kernel.verdict.Limits;
import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.kernel.verdict.Span;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** A day's dwell in a room, by hand. */
class DwellTermsTests {

    private static final double DAY = 24 * 3600;
    private static final double[] HOURS = {0, 8 * 3600, 16 * 3600, DAY};
    private static final RecordingRule RECORDING = new RecordingRule(9 * 3600, 1);
    private static final SensorReadings WARM = sensor("CL-1", 23, 23, 23, 23);

    @Test
    void dayInItsClimatePasses() {
        Judgement judged = moist(24).judge(run(List.of(WARM), List.of(sensor("CL-2", 50, 52, 48, 50))));
        assertThat(judged.outcome()).isEqualTo(Outcome.PASSED);
        assertThat(judged.sentence().english())
                .isEqualTo("Dwell at 20 to 26 degC and 40 to 60 %RH is 24 h, as at least 24 h demanded");
    }

    /** Humidity falls from 50 to 30 % within eight hours, is below 40 % after four, and comes back the same way. */
    @Test
    void onlyTimeInsideTheClimateCounts() {
        Judgement judged = moist(24).judge(run(List.of(WARM), List.of(sensor("CL-2", 50, 30, 50, 50))));
        assertThat(judged.outcome()).isEqualTo(Outcome.FAILED);
        Span dwell = Objects.requireNonNull(judged.criteria().get(0).value());
        assertThat(dwell.low()).isCloseTo(16, within(1e-6));
        assertThat(dwell.high()).isCloseTo(16, within(1e-6));
    }

    @Test
    void epoxyNeedsNoHumidityAndSiliconeDoes() {
        DwellTerms epoxy = new DwellTerms(Limits.atLeast(24), new Span(20, 26), null, RECORDING);
        assertThat(epoxy.judge(run(List.of(WARM), List.of())).outcome()).isEqualTo(Outcome.PASSED);
        assertThat(moist(24).judge(run(List.of(WARM), List.of())).sentence().english())
                .contains("no humidity was recorded over the dwell");
    }

    @Test
    void gapInTheClimateIsNotProven() {
        DwellTerms strict = new DwellTerms(Limits.atLeast(20), new Span(20, 26), null, new RecordingRule(3600, 1));
        assertThat(strict.judge(run(List.of(WARM), List.of())).outcome()).isEqualTo(Outcome.NOT_PROVEN);
    }

    @Test
    void dwellThatWasTooShortFails() {
        assertThat(moist(25)
                        .judge(run(List.of(WARM), List.of(sensor("CL-2", 50, 50, 50, 50))))
                        .outcome())
                .isEqualTo(Outcome.FAILED);
    }

    private static DwellTerms moist(double hours) {
        return new DwellTerms(Limits.atLeast(hours), new Span(20, 26), new Span(40, 60), RECORDING);
    }

    private static SensorReadings sensor(String name, double... values) {
        return SensorReadings.of(name, Readings.of(HOURS, values));
    }

    private static Measured run(List<SensorReadings> warm, List<SensorReadings> moist) {
        return new Measured(DAY, warm, List.of(), moist, Lamp.UNKNOWN);
    }
}
