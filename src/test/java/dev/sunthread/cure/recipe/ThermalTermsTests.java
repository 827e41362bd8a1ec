package dev.sunthread.cure.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.sunthread.cure.kinetics.Arrhenius;
import dev.sunthread.cure.kinetics.EquivalentTime;
import dev.sunthread.cure.kinetics.NthOrder;
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

/** Bakes judged by hand: 25 to 150 degC in 25 min, an hour's hold, cooling to 50 degC in 20 min. */
class ThermalTermsTests {

    private static final double RUN = 105 * 60;
    private static final RecordingRule RECORDING = new RecordingRule(3_601, 10);
    private static final ThermalValue SOAK = new ThermalValue.Soak(new Span(145, 155), Limits.atLeast(55));

    @Test
    void bakeInItsWindowPasses() {
        Judgement judged = judge(SOAK, bake("TC-1", 0));
        assertThat(judged.outcome()).isEqualTo(Outcome.PASSED);
        // heated at 5 K/min: 1 min from 145 to 150; cooled at 5 K/min: 1 min
        assertThat(judged.sentence().english())
                .isEqualTo("Time from 145 to 155 degC of sensor TC-1 is 62 min, as at least 55 min demanded");
    }

    @Test
    void coldestSensorDecidesWhatMustBeReached() {
        Judgement judged = judge(SOAK, bake("TC-1", 0), bake("TC-2", -9));
        assertThat(judged.outcome()).isEqualTo(Outcome.FAILED);
        assertThat(judged.sentence().english()).startsWith("Time from 145 to 155 degC of sensor TC-2 is 0 min");
    }

    @Test
    void hottestSensorDecidesWhatMustNotBeExceeded() {
        ThermalValue peak = new ThermalValue.Peak(Limits.atMost(153));
        assertThat(judge(peak, bake("TC-1", 0), bake("TC-2", -9)).outcome()).isEqualTo(Outcome.PASSED);
        assertThat(judge(peak, bake("TC-1", 0), bake("TC-3", 4)).sentence().english())
                .isEqualTo("Peak of sensor TC-3 is 154 degC, but at most 153 degC demanded");
    }

    @Test
    void ruleOfTheSensorsIsPartOfTheRecipe() {
        Measured run = run(bake("TC-1", 0), bake("TC-2", -9));
        ThermalValue reached = new ThermalValue.Peak(Limits.atLeast(149));
        assertThat(judge(SensorRule.HOTTEST, reached, run).outcome()).isEqualTo(Outcome.PASSED);
        assertThat(judge(SensorRule.COLDEST, reached, run).outcome()).isEqualTo(Outcome.FAILED);
        ThermalValue mean = new ThermalValue.Peak(Limits.between(145.4, 145.6));
        assertThat(judge(SensorRule.MEAN, mean, run).outcome()).isEqualTo(Outcome.PASSED);
    }

    @Test
    void offsetFoundAfterwardsIsCorrected() {
        SensorReadings reads9High = bake("TC-3", 0).withError(Span.exactly(9));
        assertThat(judge(SOAK, reads9High).outcome()).isEqualTo(Outcome.FAILED);
        SensorReadings driftedSinceUnknown = bake("TC-3", 0).withError(new Span(0, 9));
        assertThat(judge(SOAK, driftedSinceUnknown).outcome()).isEqualTo(Outcome.NOT_PROVEN);
        SensorReadings little = bake("TC-3", 0).withError(new Span(0, 1));
        assertThat(judge(SOAK, little).outcome()).isEqualTo(Outcome.PASSED);
    }

    @Test
    void rampsAreThoseOverTheStretchOfTheRecipe() {
        ThermalValue heating = new ThermalValue.Ramp(false, 60, Limits.between(4.9, 5.1));
        ThermalValue cooling = new ThermalValue.Ramp(true, 60, Limits.between(4.9, 5.1));
        assertThat(judge(heating, bake("TC-1", 0)).outcome()).isEqualTo(Outcome.PASSED);
        assertThat(judge(cooling, bake("TC-1", 0)).outcome()).isEqualTo(Outcome.PASSED);
        Judgement tooFast = judge(new ThermalValue.Ramp(false, 60, Limits.atMost(4)), bake("TC-1", 0));
        assertThat(tooFast.sentence().english())
                .startsWith("Fastest heating over 60 s of sensor TC-1 is 5 K/min, but at most 4");
    }

    @Test
    void gapCountsForNoMinimumAndAgainstEveryMaximum() {
        RecordingRule strict = new RecordingRule(600, 10);
        Measured run = run(bake("TC-1", 0));
        Judgement soak = new ThermalTerms(SensorRule.COLDEST_AND_HOTTEST, List.of(SOAK), strict).judge(run);
        assertThat(soak.outcome()).isEqualTo(Outcome.NOT_PROVEN);
        assertThat(soak.remarks()).singleElement().asString().contains("tells nothing of 105 min");
        ThermalValue peak = new ThermalValue.Peak(Limits.atMost(153));
        assertThat(new ThermalTerms(SensorRule.HOTTEST, List.of(peak), strict)
                        .judge(run)
                        .outcome())
                .isEqualTo(Outcome.NOT_PROVEN);
    }

    @Test
    void profileThatEndsEarlyLeavesTheRestUnknown() {
        Measured longer = Measured.ofTemperatures(RUN + 7_200, List.of(bake("TC-1", 0)));
        ThermalValue soak = new ThermalValue.Soak(new Span(145, 155), Limits.atLeast(70));
        assertThat(judge(SensorRule.COLDEST, soak, longer).outcome()).isEqualTo(Outcome.NOT_PROVEN);
    }

    @Test
    void sensorThatJumpsProvesNothing() {
        SensorReadings jumps = SensorReadings.of(
                "TC-4", Readings.of(new double[] {0, 60, 61, 62, RUN}, new double[] {150, 150, 20, 150, 150}));
        Judgement judged = judge(new ThermalValue.Peak(Limits.atMost(200)), jumps);
        assertThat(judged.outcome()).isEqualTo(Outcome.NOT_PROVEN);
        assertThat(judged.sentence().english()).startsWith("Sensor TC-4 jumps: from 150 to 20 within 1 s");
    }

    @Test
    void runWithoutProfileIsNotProven() {
        assertThat(judge(SensorRule.COLDEST, SOAK, run()).outcome()).isEqualTo(Outcome.NOT_PROVEN);
    }

    @Test
    void equivalentTimeAndDegreeAreJudgedToo() {
        ThermalValue equivalent = new ThermalValue.Equivalent(new EquivalentTime(94_900, 150), Limits.between(60, 70));
        ThermalValue degree =
                new ThermalValue.Degree(new NthOrder(new Arrhenius(0.05 / 60, 0), 1), 0, Limits.atLeast(0.99));
        assertThat(judge(equivalent, bake("TC-1", 0)).outcome()).isEqualTo(Outcome.PASSED);
        // 1 - exp(-0.05 * 105)
        Span found = Objects.requireNonNull(
                judge(degree, bake("TC-1", 0)).criteria().get(0).value());
        assertThat(found.low()).isCloseTo(1 - Math.exp(-0.05 * 105), within(1e-9));
    }

    @Test
    void curedTwiceTimesAddAndTheHighestPeakStays() {
        ThermalValue peak = new ThermalValue.Peak(Limits.atMost(154));
        List<Measured> cures = List.of(run(bake("TC-1", 0)), run(bake("TC-1", 3)));
        Judgement both = judge(cures, SOAK, peak);
        assertThat(both.outcome()).isEqualTo(Outcome.PASSED);
        Span minutes = Objects.requireNonNull(both.criteria().get(0).value());
        assertThat(minutes.low()).isGreaterThan(122).isLessThan(126);
        assertThat(both.criteria().get(1).value()).isEqualTo(Span.exactly(153));
        assertThat(both.criteria().get(1).sentence().english())
                .isEqualTo("Peak over 2 cures together is 153 degC, as at most 154 degC demanded");
    }

    @Test
    void ofTwoCuresOfWhichOneHasNoProfileOnlyWhatTheOtherShowsIsProven() {
        ThermalValue peak = new ThermalValue.Peak(Limits.atMost(154));
        List<Measured> cures = List.of(run(bake("TC-1", 0)), run());
        assertThat(judge(cures, SOAK).outcome()).isEqualTo(Outcome.PASSED);
        assertThat(judge(cures, peak).outcome()).isEqualTo(Outcome.NOT_PROVEN);
    }

    /** 1 - exp(-kt) for the sum of both times. */
    @Test
    void whatReactedInOneCureIsWhereTheNextBegins() {
        ThermalValue degree =
                new ThermalValue.Degree(new NthOrder(new Arrhenius(0.005 / 60, 0), 1), 0, Limits.atLeast(0.6));
        List<Measured> cures = List.of(run(bake("TC-1", 0)), run(bake("TC-1", 0)));
        Span found =
                Objects.requireNonNull(judge(cures, degree).criteria().get(0).value());
        assertThat(found.low()).isCloseTo(1 - Math.exp(-0.005 * 210), within(1e-9));
        assertThat(found.high()).isCloseTo(found.low(), within(1e-12));
    }

    /** Half an hour in the oven, told with two hours of readings: only the half hour counts. */
    @Test
    void readingsOutsideTheRunDoNotCount() {
        SensorReadings twoHours = SensorReadings.of(
                "TC-1", Readings.of(new double[] {-1800, 0, 1800, 7200}, new double[] {150, 150, 150, 150}));
        ThermalValue soak = new ThermalValue.Soak(new Span(145, 155), Limits.atLeast(60));
        RecordingRule recording = new RecordingRule(7_200, 10);
        Judgement judged = new ThermalTerms(SensorRule.COLDEST_AND_HOTTEST, List.of(soak), recording)
                .judge(Measured.ofTemperatures(1_800, List.of(twoHours)));
        assertThat(judged.outcome()).isEqualTo(Outcome.FAILED);
        assertThat(judged.criteria().get(0).value()).isEqualTo(Span.exactly(30));
    }

    /** One of two sensors is silent for half an hour of the hold: their mean has the same gap. */
    @Test
    void meanThroughTheGapOfOneSensorIsNotProven() {
        RecordingRule recording = new RecordingRule(1_300, 10);
        SensorReadings whole = SensorReadings.of(
                "TC-1", Readings.of(new double[] {0, 1200, 2400, 3600}, new double[] {150, 150, 150, 150}));
        SensorReadings silent =
                SensorReadings.of("TC-2", Readings.of(new double[] {0, 1200, 3600}, new double[] {150, 150, 150}));
        ThermalValue soak = new ThermalValue.Soak(new Span(145, 155), Limits.atLeast(55));
        Judgement judged = new ThermalTerms(SensorRule.MEAN, List.of(soak), recording).judge(run60(whole, silent));
        assertThat(judged.outcome()).isEqualTo(Outcome.NOT_PROVEN);
        assertThat(judged.criteria().get(0).value()).isEqualTo(new Span(20, 60));
    }

    @Test
    void gapHasNoUpperBoundOfEquivalentTimeAndDegree() {
        RecordingRule strict = new RecordingRule(600, 10);
        ThermalValue equivalent = new ThermalValue.Equivalent(new EquivalentTime(94_900, 150), Limits.atMost(300));
        ThermalValue degree =
                new ThermalValue.Degree(new NthOrder(new Arrhenius(0.005 / 60, 0), 1), 0, Limits.atMost(0.99));
        Judgement judged =
                new ThermalTerms(SensorRule.HOTTEST, List.of(equivalent, degree), strict).judge(run(bake("TC-1", 0)));
        assertThat(judged.criteria().get(0).value()).isEqualTo(new Span(0, Double.POSITIVE_INFINITY));
        assertThat(judged.criteria().get(1).value()).isEqualTo(new Span(0, 1));
    }

    /** The error may have come within the stretch over which the ramp is taken: 9 K over 60 s. */
    @Test
    void driftOfTheSensorCountsInItsRamp() {
        ThermalValue heating = new ThermalValue.Ramp(false, 60, Limits.atMost(13));
        SensorReadings drifted = bake("TC-3", 0).withError(new Span(0, 9));
        Judgement judged = judge(heating, drifted);
        assertThat(judged.outcome()).isEqualTo(Outcome.NOT_PROVEN);
        Span ramp = Objects.requireNonNull(judged.criteria().get(0).value());
        assertThat(ramp.low()).isCloseTo(5 - 9, within(1e-9));
        assertThat(ramp.high()).isCloseTo(5 + 9, within(1e-9));
    }

    /** The sensor without a gap shows that the coldest place was too cold, whatever the other did in its gap. */
    @Test
    void gapOfOneSensorHidesNoFailureOfAnother() {
        RecordingRule recording = new RecordingRule(3_000, 10);
        SensorReadings cold =
                SensorReadings.of("TC-1", Readings.of(new double[] {0, 1800, 3600}, new double[] {150, 100, 100}));
        SensorReadings silent = SensorReadings.of("TC-2", Readings.of(new double[] {0, 3600}, new double[] {150, 150}));
        ThermalValue soak = new ThermalValue.Soak(new Span(145, 155), Limits.atLeast(55));
        assertThat(new ThermalTerms(SensorRule.COLDEST_AND_HOTTEST, List.of(soak), recording)
                        .judge(run60(cold, silent))
                        .outcome())
                .isEqualTo(Outcome.FAILED);
    }

    @Test
    void numbersThatGiveNoResultLeaveTheOtherValuesJudged() {
        ThermalValue nonsense =
                new ThermalValue.Degree(new NthOrder(new Arrhenius(1e15, 0), 1), 7, Limits.atLeast(0.9));
        Judgement judged = judge(List.of(run(bake("TC-1", -9))), nonsense, SOAK);
        assertThat(judged.outcome()).isEqualTo(Outcome.FAILED);
        assertThat(judged.criteria().get(0).sentence().english())
                .isEqualTo("Degree of cure is not known: the numbers that are stated and measured give no result;"
                        + " demanded is at least 0.9");
    }

    private static Measured run60(SensorReadings... sensors) {
        return Measured.ofTemperatures(3_600, List.of(sensors));
    }

    private static Judgement judge(List<Measured> cures, ThermalValue... values) {
        return new ThermalTerms(SensorRule.COLDEST_AND_HOTTEST, List.of(values), RECORDING).judge(cures);
    }

    static SensorReadings bake(String sensor, double colder) {
        return SensorReadings.of(
                sensor,
                Readings.of(new double[] {0, 1500, 5100, 6300}, new double[] {25, 150, 150, 50})
                        .plus(colder));
    }

    private static Measured run(SensorReadings... sensors) {
        return Measured.ofTemperatures(RUN, List.of(sensors));
    }

    private static Judgement judge(ThermalValue value, SensorReadings... sensors) {
        return judge(SensorRule.COLDEST_AND_HOTTEST, value, run(sensors));
    }

    private static Judgement judge(SensorRule rule, ThermalValue value, Measured run) {
        return new ThermalTerms(rule, List.of(value), RECORDING).judge(run);
    }
}
