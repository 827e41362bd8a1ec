package dev.sunthread.electrical.terms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.sunthread.electrical.curve.CurveMethod;
import dev.sunthread.electrical.diode.RtcFrance;
import dev.sunthread.kernel.verdict.Judgement;
import dev.sunthread.kernel.verdict.Limits;
import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.kernel.verdict.Span;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Tests judged by limits, with guard bands and errors of the rig. */
class SpecificationTermsTests {

    private static final Swept LIGHT = new Swept("light", null, RtcFrance.volts(), RtcFrance.amperes());

    @Test
    void withoutRawDataNothingIsProven() {
        Judgement judged = power(0.30, 0).judge(new Tested(List.of(), List.of(), RigError.NONE));
        assertThat(judged.outcome()).isEqualTo(Outcome.NOT_PROVEN);
        assertThat(judged.sentence().english()).isEqualTo("No raw data of the test is recorded");
    }

    @Test
    void powerIsJudgedByItsLimit() {
        assertThat(power(0.30, 0).judge(test(RigError.NONE)).outcome()).isEqualTo(Outcome.PASSED);
        Judgement failed = power(0.32, 0).judge(test(RigError.NONE));
        assertThat(failed.outcome()).isEqualTo(Outcome.FAILED);
        assertThat(failed.sentence().english()).isEqualTo("Maximum power is 0.31085 W, but at least 0.32 W demanded");
    }

    @Test
    void valueInTheGuardBandIsNotProven() {
        assertThat(power(0.31, 0.002).judge(test(RigError.NONE)).outcome()).isEqualTo(Outcome.NOT_PROVEN);
        assertThat(power(0.308, 0.002).judge(test(RigError.NONE)).outcome()).isEqualTo(Outcome.PASSED);
    }

    /** 0.3108458 W read with a rig that may read up to 2.6 % too much: 0.30297 to 0.31085 W truly. */
    @Test
    void onlyMarginsLargerThanTheErrorOfTheRigStayAccepted() {
        RigError found = new RigError(new Span(0, 0.026), Span.exactly(0));
        assertThat(power(0.302, 0).judge(test(found)).outcome()).isEqualTo(Outcome.PASSED);
        assertThat(power(0.304, 0).judge(test(found)).outcome()).isEqualTo(Outcome.NOT_PROVEN);
        assertThat(power(0.312, 0).judge(test(found)).outcome()).isEqualTo(Outcome.FAILED);
        Span value = Objects.requireNonNull(
                power(0.304, 0).judge(test(found)).criteria().get(0).value());
        assertThat(value.low()).isCloseTo(0.3108458 / 1.026, within(1e-7));
    }

    @Test
    void milliamperesToldAsAmperesAreNeverAccepted() {
        double[] milliamperes =
                Arrays.stream(RtcFrance.amperes()).map(i -> i * 1000).toArray();
        Swept swept = new Swept("light", null, RtcFrance.volts(), milliamperes);
        Judgement judged = terms(CurveQuantity.SHORT_CIRCUIT_CURRENT, Limits.atLeast(0.7))
                .judge(new Tested(List.of(swept), List.of(), RigError.NONE));
        assertThat(judged.outcome()).isEqualTo(Outcome.NOT_PROVEN);
        assertThat(judged.sentence().english()).contains("milliamperes");
    }

    @Test
    void unusableSweepIsNotProvenWithItsReason() {
        Swept swept = new Swept("light", null, new double[] {0, 1, 2}, new double[] {1, 1, 0});
        Judgement judged = power(0.3, 0).judge(new Tested(List.of(swept), List.of(), RigError.NONE));
        assertThat(judged.outcome()).isEqualTo(Outcome.NOT_PROVEN);
        assertThat(judged.sentence().english()).contains("too short");
    }

    // Conformity magazine, November 2008, p. 48: 400 Mohm up to 0.1 m2, 40 Mohm m2 above; leakage of 50 uA at most
    @Test
    void insulationIsJudgedByAreaAndVoltage() {
        assertThat(SafetyTerms.insulation(0.08, 0.1, 400, 40)).isEqualTo(Limits.atLeast(400));
        assertThat(SafetyTerms.insulation(1.6, 0.1, 400, 40).least()).isCloseTo(25, within(1e-12));
        SafetyTerms terms = new SafetyTerms(
                SafetyQuantity.INSULATION_RESISTANCE, SafetyTerms.insulation(1.6, 0.1, 400, 40), 500, 60);
        assertThat(outcome(terms, new SafetyReading(false, 500, 500 / 26e6, 60)))
                .isEqualTo(Outcome.PASSED);
        assertThat(outcome(terms, new SafetyReading(false, 500, 500 / 24e6, 60)))
                .isEqualTo(Outcome.FAILED);
        assertThat(outcome(terms, new SafetyReading(false, 250, 250 / 26e6, 60)))
                .isEqualTo(Outcome.NOT_PROVEN);
        assertThat(outcome(terms, null)).isEqualTo(Outcome.NOT_PROVEN);
        SafetyTerms leakage = new SafetyTerms(SafetyQuantity.LEAKAGE, Limits.atMost(50), 3000, 60);
        assertThat(outcome(leakage, new SafetyReading(false, 3000, 49e-6, 60))).isEqualTo(Outcome.PASSED);
        assertThat(outcome(leakage, new SafetyReading(false, 3000, 51e-6, 60))).isEqualTo(Outcome.FAILED);
    }

    // ASTM E1462-12 5.6.2 leaves the limit open; 0.1 ohm is in common use
    @Test
    void groundPathIsVoltageOverCurrent() {
        SafetyTerms terms = new SafetyTerms(SafetyQuantity.GROUND_RESISTANCE, Limits.atMost(0.1), 10, 2);
        assertThat(outcome(terms, new SafetyReading(true, 0.9, 10, 2))).isEqualTo(Outcome.PASSED);
        assertThat(outcome(terms, new SafetyReading(true, 1.1, 10, 2))).isEqualTo(Outcome.FAILED);
        assertThat(outcome(terms, new SafetyReading(true, 0.01, 1, 2))).isEqualTo(Outcome.NOT_PROVEN);
    }

    private static Outcome outcome(SafetyTerms terms, @Nullable SafetyReading reading) {
        return terms.judge(reading == null ? List.of() : List.of(reading)).outcome();
    }

    private static SpecificationTerms power(double least, double guard) {
        return terms(CurveQuantity.MAXIMUM_POWER, new Limits(least, null, guard));
    }

    private static SpecificationTerms terms(CurveQuantity quantity, Limits limits) {
        return new SpecificationTerms(
                List.of(new CurveTerms(
                        "light", CurveMethod.USUAL, null, List.of(new CurveTerms.Limited(quantity, limits)))),
                List.of(),
                List.of());
    }

    private static Tested test(RigError error) {
        return new Tested(List.of(LIGHT), List.of(), error);
    }
}
