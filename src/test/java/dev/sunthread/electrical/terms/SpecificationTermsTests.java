package dev.sunthread.electrical.terms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.sunthread.electrical.curve.CurveMethod;
import dev.sunthread.electrical.curve.PowerMethod;
import dev.sunthread.electrical.diode.RtcFrance;
import dev.sunthread.kernel.verdict.Criterion;
import dev.sunthread.kernel.verdict.Judgement;
import dev.sunthread.kernel.verdict.Limits;
import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.kernel.verdict.Span;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
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
        assertThat(failed.sentence().english())
                .startsWith("Maximum power is 0.3")
                .endsWith(" W, but at least 0.32 W demanded");
    }

    @Test
    void valueInTheGuardBandIsNotProven() {
        assertThat(power(0.31, 0.002).judge(test(RigError.NONE)).outcome()).isEqualTo(Outcome.NOT_PROVEN);
        assertThat(power(0.300, 0.002).judge(test(RigError.NONE)).outcome()).isEqualTo(Outcome.PASSED);
    }

    /** What may truly have been 2.6 % less reaches that much farther down. */
    @Test
    void onlyMarginsLargerThanTheErrorOfTheRigStayAccepted() {
        RigError found = new RigError(new Span(0, 0.026), Span.exactly(0));
        Span asRead = watts(RigError.NONE);
        Span value = watts(found);
        assertThat(value.low()).isCloseTo(asRead.low() / 1.026, within(1e-9));
        assertThat(value.high()).isCloseTo(asRead.high(), within(1e-12));
        assertThat(power(asRead.low() - 0.001, 0).judge(test(RigError.NONE)).outcome())
                .isEqualTo(Outcome.PASSED);
        assertThat(power(asRead.low() - 0.001, 0).judge(test(found)).outcome()).isEqualTo(Outcome.NOT_PROVEN);
        assertThat(power(asRead.high() + 0.001, 0).judge(test(found)).outcome()).isEqualTo(Outcome.FAILED);
    }

    private static Span watts(RigError error) {
        return Objects.requireNonNull(
                power(0.3, 0).judge(test(error)).criteria().get(0).value());
    }

    /** Three points that stand unevenly give a parabola of 80 W and more through a cell of 16 W. */
    @Test
    void powerThatThePointsDoNotAllowIsNotProven() {
        double[] volts = {0, 0.3, 0.6, 0.9, 1.2, 1.5, 1.8, 2.1, 2.4, 2.7, 3, 3.3, 3.6, 3.9, 4.0, 4.001, 5.0, 5.1};
        double[] amperes = {
            4.05, 4.05, 4.05, 4.05, 4.05, 4.05, 4.05, 4.05, 4.05, 4.05, 4.05, 4.05, 4.05, 4.04, 4.04, 4.08, 0.5, -0.1
        };
        CurveTerms.Limited limit = new CurveTerms.Limited(CurveQuantity.MAXIMUM_POWER, Limits.atLeast(15));
        Judgement parabola = judged(new CurveMethod(PowerMethod.THREE_POINT, 5, 4), volts, amperes, limit);
        assertThat(parabola.outcome()).isEqualTo(Outcome.NOT_PROVEN);
        assertThat(parabola.sentence().english()).containsAnyOf("but its points allow", "the product of");
        Judgement usual = judged(CurveMethod.USUAL, volts, amperes, limit);
        assertThat(usual.outcome()).isEqualTo(Outcome.PASSED);
        assertThat(Objects.requireNonNull(usual.criteria().get(0).value()).high())
                .isLessThan(20.3);
    }

    /** A point that the rig dropped, and a curve that fills more than all: nothing is judged by them. */
    @Test
    void impossibleCurvesProveNothing() {
        CurveTerms.Limited limit = new CurveTerms.Limited(CurveQuantity.SHORT_CIRCUIT_CURRENT, Limits.atLeast(0.1));
        double[] dropped = RtcFrance.amperes();
        dropped[10] = 0;
        Judgement judged = judged(CurveMethod.USUAL, RtcFrance.volts(), dropped, limit);
        assertThat(judged.outcome()).isEqualTo(Outcome.NOT_PROVEN);
        assertThat(judged.sentence().english()).contains("its current rises from 0 A");
        double[] flat = {0, 0.1, 0.2, 0.3, 0.4, 0.5};
        assertThat(judged(CurveMethod.USUAL, new double[] {0, 0.1, 0.2, 0.3, 0.4, 0.5}, flat, limit)
                        .outcome())
                .isEqualTo(Outcome.NOT_PROVEN);
    }

    /** A sweep that begins at 0.7 % of its open-circuit voltage loses nothing but what lies below. */
    @Test
    void eachQuantityIsJudgedByItself() {
        double[] volts =
                IntStream.rangeClosed(0, 40).mapToDouble(i -> 0.2 + i * 0.75).toArray();
        double[] amperes = DoubleStream.of(volts)
                .map(v -> 4 - 4 * Math.expm1(v / 1.2) / Math.expm1(29 / 1.2))
                .toArray();
        CurveTerms.Limited[] limits = {
            new CurveTerms.Limited(CurveQuantity.SHORT_CIRCUIT_CURRENT, Limits.between(3.9, 4.1)),
            new CurveTerms.Limited(CurveQuantity.OPEN_CIRCUIT_VOLTAGE, Limits.between(28.5, 29.5)),
            new CurveTerms.Limited(CurveQuantity.FILL_FACTOR, Limits.between(0.8, 0.95)),
            new CurveTerms.Limited(CurveQuantity.MAXIMUM_POWER, Limits.atLeast(90))
        };
        assertThat(judged(CurveMethod.USUAL, volts, amperes, limits).sentence().english())
                .startsWith("All 4 criteria are met");
        double[] late = DoubleStream.of(volts).map(v -> v + 2).toArray();
        List<Outcome> outcomes = judged(CurveMethod.USUAL, late, amperes, limits).criteria().stream()
                .map(Criterion::outcome)
                .toList();
        assertThat(outcomes).containsExactly(Outcome.NOT_PROVEN, Outcome.FAILED, Outcome.NOT_PROVEN, Outcome.PASSED);
    }

    /** A line through five nearly level points is as often a negative resistance as a high one. */
    @Test
    void shuntOfANoisyCurveHasASpan() {
        Random random = new Random(7);
        double[] volts = IntStream.rangeClosed(0, 60).mapToDouble(i -> i * 0.5).toArray();
        CurveTerms.Limited limit = new CurveTerms.Limited(CurveQuantity.SHUNT_SLOPE, Limits.atLeast(200));
        for (int i = 0; i < 50; i++) {
            double[] amperes = DoubleStream.of(volts)
                    .map(v -> 4
                            - v / 2_000
                            - 4 * Math.expm1(v / 1.2) / Math.expm1(29 / 1.2)
                            + random.nextGaussian() * 0.002)
                    .toArray();
            assertThat(judged(CurveMethod.USUAL, volts, amperes, limit).outcome())
                    .isEqualTo(Outcome.PASSED);
        }
    }

    private static Judgement judged(
            CurveMethod method, double[] volts, double[] amperes, CurveTerms.Limited... limits) {
        return new SpecificationTerms(
                        List.of(new CurveTerms("light", method, null, List.of(limits))), List.of(), List.of())
                .judge(new Tested(List.of(new Swept("light", null, volts, amperes)), List.of(), RigError.NONE));
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
        Limits fixed = Limits.atLeast(400);
        assertThat(SafetyTerms.insulation(digits("0.08"), digits("0.1"), fixed, digits("40")))
                .isEqualTo(fixed);
        Limits large = SafetyTerms.insulation(digits("1.6"), digits("0.1"), fixed, digits("40"));
        assertThat(large.least()).isEqualTo(25);
        SafetyTerms terms = new SafetyTerms(SafetyQuantity.INSULATION_RESISTANCE, large, digits("500"), digits("60"));
        assertThat(outcome(terms, insulation("500", "0.0000192"))).isEqualTo(Outcome.PASSED);
        assertThat(outcome(terms, insulation("500", "0.0000208"))).isEqualTo(Outcome.FAILED);
        assertThat(outcome(terms, insulation("250", "0.0000096"))).isEqualTo(Outcome.NOT_PROVEN);
        assertThat(outcome(terms)).isEqualTo(Outcome.NOT_PROVEN);
        SafetyTerms leakage = new SafetyTerms(SafetyQuantity.LEAKAGE, Limits.atMost(50), digits("3000"), digits("60"));
        assertThat(outcome(leakage, insulation("3000", "0.00005"))).isEqualTo(Outcome.PASSED);
        assertThat(outcome(leakage, insulation("3000", "0.000051"))).isEqualTo(Outcome.FAILED);
    }

    // the limit of Conformity magazine, November 2008, p. 48, met to the digit
    @Test
    void insulationIsComparedAsDecimals() {
        SafetyTerms terms =
                new SafetyTerms(SafetyQuantity.INSULATION_RESISTANCE, Limits.atLeast(400), digits("500"), digits("60"));
        assertThat(outcome(terms, insulation("500", "0.00000125"))).isEqualTo(Outcome.PASSED);
        assertThat(outcome(terms, insulation("500", "0.000001250000001"))).isEqualTo(Outcome.FAILED);
    }

    @Test
    void limitBrokenAtALowerVoltageFailsWhateverIsReadLater() {
        SafetyTerms terms =
                new SafetyTerms(SafetyQuantity.INSULATION_RESISTANCE, Limits.atLeast(400), digits("500"), digits("60"));
        SafetyReading broken = new SafetyReading(false, digits("400"), digits("0.005"), digits("3"));
        assertThat(outcome(terms, broken, insulation("500", "0.000001"))).isEqualTo(Outcome.FAILED);
    }

    @Test
    void noCurrentIsNotPassedByItself() {
        SafetyTerms terms =
                new SafetyTerms(SafetyQuantity.INSULATION_RESISTANCE, Limits.atLeast(400), digits("500"), digits("60"));
        assertThat(outcome(terms, insulation("500", "0"))).isEqualTo(Outcome.NOT_PROVEN);
        assertThat(outcome(terms, insulation("500", "0"), insulation("500", "0.000001")))
                .isEqualTo(Outcome.PASSED);
        SafetyTerms leakage = new SafetyTerms(SafetyQuantity.LEAKAGE, Limits.atMost(50), digits("500"), digits("60"));
        assertThat(outcome(leakage, insulation("500", "0"))).isEqualTo(Outcome.NOT_PROVEN);
        SafetyTerms ground =
                new SafetyTerms(SafetyQuantity.GROUND_RESISTANCE, Limits.atMost(0.1), digits("10"), digits("2"));
        assertThat(outcome(ground, ground("0", "10"))).isEqualTo(Outcome.NOT_PROVEN);
    }

    // ASTM E1462-12 5.6.2 leaves the limit open; 0.1 ohm is in common use
    @Test
    void groundPathIsVoltageOverCurrent() {
        SafetyTerms terms =
                new SafetyTerms(SafetyQuantity.GROUND_RESISTANCE, Limits.atMost(0.1), digits("10"), digits("2"));
        assertThat(outcome(terms, ground("1", "10"))).isEqualTo(Outcome.PASSED);
        assertThat(outcome(terms, ground("1.1", "10"))).isEqualTo(Outcome.FAILED);
        assertThat(outcome(terms, ground("0.01", "1"))).isEqualTo(Outcome.NOT_PROVEN);
    }

    private static SafetyReading insulation(String volts, String amperes) {
        return new SafetyReading(false, digits(volts), digits(amperes), digits("60"));
    }

    private static SafetyReading ground(String volts, String amperes) {
        return new SafetyReading(true, digits(volts), digits(amperes), digits("2"));
    }

    private static BigDecimal digits(String written) {
        return new BigDecimal(written);
    }

    private static Outcome outcome(SafetyTerms terms, SafetyReading... readings) {
        return terms.judge(List.of(readings)).outcome();
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
